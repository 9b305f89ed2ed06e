// Written by `WRITE_CONTRACT=1 cargo test --test contract`; do not edit.
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
 * Counts of pairs; rows by the student's rating, columns by the teacher's.
 */
table: [[number, number, number, number], [number, number, number, number], [number, number, number, number], [number, number, number, number]], 
/**
 * Pairs of ratings.
 */
pairs: number, 
/**
 * Weighted kappa (quadratic weights); none below ten pairs, or if all ratings are the same.
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
 * Why it is in the queue.
 */
reason: Reason, };
export type AloneWork = { 
/**
 * The seat.
 */
seat: number, 
/**
 * The concept.
 */
concept: ConceptName, };
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
 * The response.
 */
response: Response, 
/**
 * Seconds since the exercise was shown or last answered, counted by the screen.
 */
seconds: number, };
export type Appearance = { 
/**
 * Colours.
 */
theme: AppearanceTheme, 
/**
 * Size of the text in percent, one of [`TEXT_PERCENTS`].
 */
text_percent: number, 
/**
 * The decimal sign.
 */
decimal_sign: DecimalSign, 
/**
 * Whether nothing moves; if not, the system decides.
 */
less_motion: boolean, 
/**
 * Whether an exercise is read aloud when it opens.
 */
reads_aloud: boolean, };
export type AppearanceTheme = "device" | "light" | "dark" | "contrast" | "contrast_dark";
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
 * The new assignment.
 */
assignment: NewAssignment, };
export type AssignedAmount = { 
/**
 * Exercises done.
 */
done: number, 
/**
 * Exercises assigned.
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
 * Whether it is withdrawn; it can be restored.
 */
withdrawn: boolean, 
/**
 * Seats without a device. The assignment cannot be sealed for them until their first hand-in.
 */
waiting: Array<number>, 
/**
 * The progress of each student.
 */
progress: Array<SeatProgress>, };
export type BackUp = { 
/**
 * The store.
 */
store: StoreName, 
/**
 * The passphrase, at least 8 characters.
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
 * The date.
 */
today: string, 
/**
 * The group of seats; empty for the whole class.
 */
group: Array<number>, 
/**
 * The pass of the date, from 0.
 */
pass: number, 
/**
 * Day of the rotation, from 1; none on a day without school.
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
 * Whether there are results and practice enough for shares. Ratings give the order alone.
 */
level_known: boolean, 
/**
 * One row for each concept: weakest first, then those not taught yet, then those without a report.
 */
rows: Array<BoardRow>, 
/**
 * The commonest misconceptions over all concepts, those of most students first.
 */
misconceptions: Array<ConceptMisconception>, 
/**
 * How many more misconceptions there are.
 */
misconceptions_left_out: number, };
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
 * Rank, 1 is weakest; none before its first lesson or without a report.
 */
rank: number | null, 
/**
 * Estimated share of the class that has it, 0 to 1; none while the level is not known.
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
 * Whether so few reported that the teacher should ask first.
 */
ask_first: boolean, 
/**
 * Whether the students feel sure and most answers are wrong.
 */
sure_and_wrong: boolean, 
/**
 * How many reporters last chose each rating, `NotYet` first.
 */
latest: [number, number, number, number], 
/**
 * How many reporters last marked right, and wrong.
 */
results: ResultSums, 
/**
 * Practice answers of all students.
 */
practice: PracticeSums, 
/**
 * Days since the newest report on it.
 */
newest_days: number | null, 
/**
 * Its trend.
 */
trend: Trend, 
/**
 * The passes, in order.
 */
passes: Array<PassCell>, 
/**
 * The commonest misconceptions, most frequent first, at most five.
 */
misconceptions: Array<MisconceptionCount>, };
export type BoxNumbers = { "kind": "cards", 
/**
 * Exact decimal texts with a point, in the order shown.
 */
cards: Array<string>, } | { "kind": "range", 
/**
 * The least.
 */
least: number, 
/**
 * The greatest.
 */
greatest: number, };
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
 * The unknown name.
 */
name: string, } | { "code": "bad_arguments", 
/**
 * What does not fit.
 */
detail: string, } | { "code": "not_found", 
/**
 * The kind of thing.
 */
what: Thing, } | { "code": "invalid", 
/**
 * Which value.
 */
field: Field, 
/**
 * The rule it breaks.
 */
rule: Rule, } | { "code": "calendar", 
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
 * What is wrong with it.
 */
detail: string, } | { "code": "newer_store", 
/**
 * Its schema version.
 */
found: number, 
/**
 * The newest version that this program knows.
 */
known: number, } | { "code": "damaged_store", 
/**
 * For the log.
 */
detail: string, } | { "code": "disk_full" } | { "code": "not_writable", 
/**
 * For the log.
 */
detail: string, } | { "code": "store_busy" } | { "code": "locked" } | { "code": "desk_locked" } | { "code": "storage", 
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
missing: VoiceMissing, } | { "code": "no_place", 
/**
 * Why.
 */
why: PlaceTrouble, } | { "code": "not_loaded" } | { "code": "cancelled" };
export type CarryAsked = { 
/**
 * The profile's id.
 */
student: string, 
/**
 * The passphrase, at least 8 characters.
 */
passphrase: string, };
export type CarryDone = { 
/**
 * The student it was added to.
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
 * Its format.
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
export type Certainty = "counted" | "clear" | "likely" | "not_sure" | "ratings_alone" | "ask_first";
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
 * The outcome.
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
export type ClassDay = { 
/**
 * Today's date.
 */
today: string, 
/**
 * Day of the rotation, from 1; none on a day without school.
 */
day: number | null, 
/**
 * Days in the rotation.
 */
rotation_days: number, 
/**
 * The pass, from 1.
 */
pass: number, 
/**
 * Passes in the year.
 */
pass_count: number, 
/**
 * Whether today is a closure.
 */
closed: boolean, 
/**
 * The next school day after today.
 */
next: DayAhead | null, 
/**
 * First day of the year.
 */
first_day: string, 
/**
 * Last day of the year.
 */
last_day: string, 
/**
 * The days of the year without school that would have lessons otherwise.
 */
closures: Array<string>, 
/**
 * Whose devices know these days.
 */
known: DaysKnown, };
export type ClassFolderState = { 
/**
 * Its path or name; `None` without a class folder.
 */
folder: string | null, 
/**
 * The path of the one that the person stopped using since the program started.
 */
stopped: string | null, 
/**
 * Whether this device can use one.
 */
possible: boolean, 
/**
 * The date on which the desk last reached it.
 */
reached_on: string | null, 
/**
 * Why it cannot be used now.
 */
trouble: FolderTrouble | null, 
/**
 * How many classes have a change that their pack in the folder does not have yet.
 */
packs_waiting: number, 
/**
 * The import that this call started.
 */
job: JobId | null, 
/**
 * Whether something is under way: a round, files to import, a pack to put.
 */
busy: boolean, };
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
 * The passphrase, at least 8 characters.
 */
passphrase: string, 
/**
 * Whether the computer that opens it saves the class packs from then on, and this one does not.
 */
hand_over: boolean, };
export type ClassNow = { 
/**
 * The class.
 */
class_title: string, 
/**
 * Today.
 */
today: string, 
/**
 * What can be said so far.
 */
knowledge: Knowledge, 
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
 * Passes with ratings of three students or more, on the concept that has most of them. A
 * trend needs six.
 */
passes_rated: number, 
/**
 * The sentences in the order of the screen, at most [`MOST_SENTENCES`].
 */
sentences: Array<Sentence>, 
/**
 * Today, or the next school day if today is none, and the school day after it.
 */
days: Array<DayPlan>, 
/**
 * Seats whose newest report came from paper, without a device: copies to make.
 */
on_paper: number, 
/**
 * How much is missing, with the usual number of days: students in the list of who has not, and its
 * lines that are about no student.
 */
lacking: number, };
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
 * The bounds of practice at home.
 */
practice: PracticeRules, };
export type ClassSummary = { 
/**
 * The class's id.
 */
id: string, 
/**
 * The title.
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
 * The date of the newest report.
 */
newest_report: string | null, 
/**
 * The version of the last class pack; 0 before the first.
 */
pack_version: number, 
/**
 * Whether the class has changed since that pack; false if another computer saves the packs.
 */
pack_outdated: boolean, 
/**
 * Whether this computer saves the class packs.
 */
saves_packs: boolean, };
export type ClassTitle = { 
/**
 * The class's id.
 */
id: string, 
/**
 * Its title.
 */
title: string, };
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
 * Students with a high last rating and wrong results, most wrong first.
 */
sure_but_wrong: Array<Contradiction>, 
/**
 * Students with a low last rating and right results, most right first.
 */
unsure_but_right: Array<Contradiction>, 
/**
 * Each student's calibration.
 */
students: Array<StudentCalibration>, 
/**
 * How students' ratings agree with the teacher's observations.
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
 * The name by which other drafts refer to it: its id or code, or its identifier in the
 * package.
 */
key: string, 
/**
 * The id it will have.
 */
id: string, 
/**
 * Its short title.
 */
title: Text, 
/**
 * Its "I can" statement.
 */
i_can: Text, 
/**
 * Its strand; the teacher chooses it for an item of a package.
 */
strand: Strand | null, 
/**
 * Its school grade; the teacher chooses it where the package does not say it.
 */
grade: number | null, 
/**
 * Its prerequisites, by key, id, title or code.
 */
before: Array<string>, 
/**
 * Codes of published standards.
 */
codes: Array<string>, 
/**
 * The title of its parent in the package; empty in a table.
 */
under: string, };
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
 * How often it led to an answer.
 */
count: number, 
/**
 * How many students have it.
 */
students: number, 
/**
 * Days since it last led to an answer.
 */
newest_days: number, };
export type ConceptName = { 
/**
 * Its id.
 */
id: string, 
/**
 * Its strand; the message `strand-<strand>` is the name.
 */
strand: string, 
/**
 * Its short title in the language asked for.
 */
title: string, 
/**
 * Its "I can" statement in the language asked for.
 */
i_can: string, 
/**
 * The language of the title, if the title is missing in the language asked for.
 */
shown_in?: Language, 
/**
 * Whether it has exercises; if not, students only rate it.
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
 * One line for each seat, who needs it most first.
 */
students: Array<StudentReport>, };
export type ConceptsPicked = { 
/**
 * The class.
 */
class: string, 
/**
 * The name of the file, for the import report.
 */
file: string, 
/**
 * The picked drafts, as the teacher edited them.
 */
drafts: Array<ConceptDraft>, 
/**
 * The refused lines, for the import report.
 */
refused: Array<LineRefused>, };
export type Confidence = 0 | 1 | 2 | 3;
export type ConfidenceSaid = { 
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
confidence: Confidence, };
export type Contradiction = { 
/**
 * The student.
 */
student: GroupMember, 
/**
 * The concept.
 */
concept: ConceptName, 
/**
 * The last rating.
 */
rating: Confidence, 
/**
 * Results since that rating, by outcomes and observations.
 */
results: ResultSums, 
/**
 * Practice answers since that rating.
 */
practice: PracticeSums, };
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
 * The copies, newest first.
 */
copies: Array<StoredCopy>, 
/**
 * For a desk with a lock: how many of its copies may open without the passphrase. They are
 * desks that were replaced, and copies that this program cannot read.
 */
readable: number, 
/**
 * Why the last daily copy failed, if it did.
 */
trouble: CallError | null, 
/**
 * For a desk with a lock: why copies from before the lock could not be wiped, if they could
 * not.
 */
lock_trouble: CallError | null, };
export type CopyClass = { 
/**
 * The earlier class.
 */
from: string, 
/**
 * The title of the new class, 1 to 60 characters.
 */
title: string, 
/**
 * Given names or codes, one for each seat; an empty text is a seat without a name.
 */
names: Array<string>, 
/**
 * The new school year.
 */
year: SchoolYear, };
export type CopyKind = "daily" | "before_change" | "replaced";
export type CreateClass = { 
/**
 * The new class.
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
 * The store.
 */
store: StoreName, 
/**
 * The student's nickname, from the newest whole copy.
 */
nickname: string | null, 
/**
 * Why it cannot be opened.
 */
why: CallError, 
/**
 * The newest whole copy.
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
export type DatedObservation = { 
/**
 * School date.
 */
date: string, 
/**
 * The confidence that the teacher saw, if entered.
 */
confidence: Confidence | null, 
/**
 * Whether the student has it.
 */
has_it: boolean, };
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
 * The outcome.
 */
outcome: Outcome | null, };
export type DayAhead = { 
/**
 * Its date.
 */
date: string, 
/**
 * Its day of the rotation, from 1.
 */
day: number, };
export type DayClosed = { 
/**
 * The class.
 */
class: string, 
/**
 * The date.
 */
date: string, 
/**
 * Whether it is without school.
 */
closed: boolean, };
export type DayPlan = { 
/**
 * Its date.
 */
date: string, 
/**
 * Whether it is today.
 */
is_today: boolean, 
/**
 * Its day of the rotation, from 1.
 */
day: number, 
/**
 * Its concepts, in the order of the review.
 */
concepts: Array<DayPlanConcept>, };
export type DayPlanConcept = { 
/**
 * The concept.
 */
concept: ConceptName, 
/**
 * Its phase on that day.
 */
phase: Phase, 
/**
 * Whether its first lesson is on that day.
 */
first_lesson: boolean, 
/**
 * How to discuss it, if the talk plan chooses it.
 */
talk: TalkWay | null, 
/**
 * Its weak prerequisites, if its first lesson is within ten school days.
 */
weak_before: Array<ConceptName>, };
export type DaySaid = { 
/**
 * The profile's id.
 */
student: string, 
/**
 * The date on which the class was on that day.
 */
date: string, 
/**
 * The day of the rotation, from 1; `None` for the days of the class pack.
 */
day: number | null, };
export type DaysKnown = { 
/**
 * Seats whose device had a class pack with other days.
 */
unaware: Array<NamedSeat>, 
/**
 * How many seats have not handed in, so that nobody knows which pack they have.
 */
unheard: number, };
export type DecimalSign = "language" | "comma" | "point";
export type DeskIdle = { 
/**
 * 5, 10, 15 or 30 minutes without use; `None`: never.
 */
minutes: number | null, };
export type DeskLock = { 
/**
 * Whether the desk has a lock.
 */
has_lock: boolean, 
/**
 * Whether it is locked now.
 */
locked: boolean, 
/**
 * The minutes without use after which it locks itself; `None`: never.
 */
idle_minutes: number | null, };
export type DeskPassphrase = { 
/**
 * The passphrase.
 */
passphrase: string, };
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
 * The device's number at this desk.
 */
device: number, 
/**
 * Whether it is accepted or rejected; `None` quarantines it.
 */
accept: boolean | null, };
export type DeviceMove = { 
/**
 * The class.
 */
class: string, 
/**
 * The seat for which the device hands in.
 */
seat: number, 
/**
 * The number of the device.
 */
device: number, 
/**
 * The seat of the student whose work it is.
 */
to: number, 
/**
 * Whether it is accepted there; `None` quarantines it.
 */
accept: boolean | null, };
export type DeviceOfSeat = { 
/**
 * The class.
 */
class: string, 
/**
 * The seat's number.
 */
seat: number, 
/**
 * The device's number at this desk.
 */
device: number, };
export type DeviceSettings = { 
/**
 * Language of the first screen and of the teacher's screens.
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
 * Screens whose guide was read; with `all`, no guide opens by itself.
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
 * The text in each box.
 */
texts: Array<string>, 
/**
 * The half of the day, once it is chosen.
 */
half_day: HalfDay | null, } | { "kind": "tapped", 
/**
 * The response that would be checked.
 */
response: Response, } | { "kind": "parts", 
/**
 * Of the first part.
 */
first: Draft | null, 
/**
 * Of the second part.
 */
second: Draft | null, };
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
 * The draft; `None` if it is empty.
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
signed: boolean, } | { "kind": "boxes", 
/**
 * How many boxes the sentence has.
 */
boxes: number, 
/**
 * The numbers that a box can take.
 */
numbers: BoxNumbers, } | { "kind": "two_parts", 
/**
 * The first part.
 */
first: Entry, 
/**
 * The question of the second part.
 */
ask: Say, 
/**
 * The second part.
 */
second: Entry, };
export type EntryAsked = { 
/**
 * The class.
 */
class: string, 
/**
 * The day; `None` for the latest school day.
 */
date: string | null, };
export type EntryCell = { 
/**
 * The rating from paper.
 */
rating: Confidence | null, 
/**
 * The outcome from paper.
 */
outcome: Outcome | null, 
/**
 * The rating from a device.
 */
device_rating: Confidence | null, 
/**
 * The outcome from a device.
 */
device_outcome: Outcome | null, 
/**
 * The observation.
 */
seen: Confidence | null, 
/**
 * The record after a small group: whether the student has it.
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
 * The school day before it, if any.
 */
earlier: string | null, 
/**
 * The school day after it, if not in the future.
 */
later: string | null, 
/**
 * The concepts of the day in the order of the review.
 */
concepts: Array<ConceptName>, 
/**
 * One row for each seat.
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
 * The value.
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
 * One cell for each concept.
 */
cells: Array<EntryCell>, };
export type EntryValue = { "kind": "rating", 
/**
 * The rating.
 */
rating: Confidence | null, } | { "kind": "outcome", 
/**
 * The outcome.
 */
outcome: Outcome | null, } | { "kind": "seen", 
/**
 * On the students' scale.
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
 * Whether the exercise is finished; if not, the student has one more try.
 */
finished: boolean, 
/**
 * What is said about the answer: the misconception recognised, or a note on its form.
 */
says: Array<Block>, 
/**
 * The right answer, once the exercise is finished.
 */
answer: Array<Block> | null, 
/**
 * The worked steps, once the exercise is finished.
 */
steps: Array<Array<Block>>, 
/**
 * The progress of the evening.
 */
session: Session, };
export type Field = "amount" | "answer" | "class" | "class_pack" | "concepts" | "copies" | "dates" | "desk_lock" | "device" | "draft" | "earlier_slip" | "evenings" | "exercises" | "focus" | "folder" | "goals" | "groups" | "idle_minutes" | "job" | "minutes" | "names" | "note" | "nickname" | "pin" | "practice" | "removed" | "roster" | "seats" | "share_table" | "student" | "students" | "text" | "text_percent" | "title" | "world";
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
 * Its suggested name.
 */
file_name: string, 
/**
 * Where it was saved, in words; `None` if the person cancelled.
 */
place: string | null, };
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
 * Check-ins and practice counts that are new.
 */
new_entries: number, 
/**
 * What the teacher should check although the file was imported.
 */
flags: Array<Flag>, };
export type FirstLessons = { 
/**
 * The class.
 */
class: string, 
/**
 * Each concept with the date of its first lesson; `None` removes it.
 */
lessons: Array<[string, string | null]>, };
export type Flag = { "code": "future_date", 
/**
 * The date that is furthest off.
 */
date: string, 
/**
 * The number of entries.
 */
entries: number, } | { "code": "outside_year", 
/**
 * The date that is furthest off.
 */
date: string, 
/**
 * The number of entries.
 */
entries: number, } | { "code": "unknown_concept", 
/**
 * The number of concepts.
 */
concepts: number, };
export type Focus = { 
/**
 * The profile's id.
 */
student: string, 
/**
 * The concepts, at most three.
 */
concepts: Array<string>, };
export type FolderCode = { 
/**
 * The typed code.
 */
seat_code: string, };
export type FolderShown = { 
/**
 * The newest pack of each class, two at most. With several, [`StudentDoor::pack_for_code`] finds
 * the right one.
 */
packs: Array<PackOffer>, 
/**
 * Why the folder cannot be used now.
 */
trouble: FolderTrouble | null, };
export type FolderTrouble = "away" | "full" | "read_only" | "silent" | "no_pack" | "too_many" | "in_the_way" | "not_allowed" | "changes_names" | "other";
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
 * The sentence as the student wrote it.
 */
words: string, 
/**
 * Whether the student marked it as reached.
 */
reached: boolean, };
export type Goals = { 
/**
 * The profile's id.
 */
student: string, 
/**
 * The goals, at most three, in their order.
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
 * The slot, from 0.
 */
slot: number, 
/**
 * The concept.
 */
concept: string, 
/**
 * The seats of those who are taught.
 */
seats: Array<number>, 
/**
 * The seats of those who have the concept and explain it.
 */
partners: Array<number>, };
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
 * The slot, from 0.
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
 * Probability that the student has the concept; none while the level is not known.
 */
has_it: number | null, };
export type GroupPage = { 
/**
 * The concept.
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
 * Prerequisites that some members lack; empty while the level is not known.
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
 * The concept.
 */
concept: string, 
/**
 * Its seats.
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
 * Whether the student has it.
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
 * Whether the student has the concept; `None` removes the record.
 */
has_it: boolean | null, };
export type GroupView = { 
/**
 * The slot, from 0.
 */
slot: number, 
/**
 * The concept.
 */
concept: ConceptName, 
/**
 * Those who are taught.
 */
members: Array<GroupMember>, 
/**
 * Those who have the concept and explain it.
 */
partners: Array<GroupMember>, };
export type GroupWishes = { 
/**
 * Times at which groups can meet, 1 to 6.
 */
slots: number, 
/**
 * Groups at the same time, 1 to 12.
 */
groups_at_once: number, 
/**
 * Students of a group at least.
 */
size_least: number, 
/**
 * Students of a group at most, up to 12. Groups of two to five gain most (EEF toolkit, small
 * group tuition); above six the gain is smaller.
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
 * Seats that are absent today.
 */
absent: Array<number>, 
/**
 * Whether each group gets a partner: a student who has the concept, says so, and is in no
 * group at that time.
 */
with_partner: boolean, };
export type GroupsAsked = { 
/**
 * The class.
 */
class: string, 
/**
 * Room, pairs and absences; the desk keeps them.
 */
wishes: GroupWishes, 
/**
 * The groups that come first, if any.
 */
first: GroupsFirst | null, 
/**
 * Whether to compute a proven bound, which takes about a second.
 */
prove: boolean, };
export type GroupsDesk = { 
/**
 * Today.
 */
today: string, 
/**
 * Every seat.
 */
seats: Array<GroupMember>, 
/**
 * The kept wishes, with the absences of today.
 */
wishes: GroupWishes, 
/**
 * Concepts of the rotation that have been taught, weakest first.
 */
concepts: Array<ConceptName>, 
/**
 * The next school day, if the year has one.
 */
next_day: string | null, 
/**
 * Kept groups, newest day first, at most 30 days.
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
 * The upper bound that came with the suggestion.
 */
best_at_most: number, };
export type GroupsFirst = { 
/**
 * The concept.
 */
concept: string, 
/**
 * Their seats.
 */
seats: Array<number>, };
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
 * The groups; an empty list removes the day.
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
groups: Array<KeptGroup>, 
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
 * Whether there are results and practice enough to say who needs a concept. Otherwise the
 * groups go by order alone: "in need" is then the weaker half of all pairs of a student and
 * a planned concept.
 */
level_known: boolean, 
/**
 * Students who need a planned concept and are in no group.
 */
unplaced: Array<GroupMember>, 
/**
 * What each student works on alone while others sit in a group: the concept with exercises
 * that the student needs most and has no lesson on. Students who need none are left out.
 */
alone: Array<AloneWork>, 
/**
 * How many present students need a planned concept.
 */
in_need: number, 
/**
 * The value of the plan, for needs met and students reached.
 */
value: number, 
/**
 * An upper bound for the value of every plan under these wishes.
 */
best_at_most: number, 
/**
 * The share of the best value that this plan misses at most; 0 means that it is the best.
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
 * The folder or app that it was saved to, as the shell names it; nothing if it was not
 * saved.
 */
place: string | null, 
/**
 * Whether it was handed to another program instead, which may or may not have sent it.
 */
shared: boolean, 
/**
 * Check-ins in it that count.
 */
check_ins: number, 
/**
 * Finished exercises in it that count.
 */
answers: number, };
export type HandInPreview = { 
/**
 * The title of the class that it is for.
 */
class_title: string, 
/**
 * Check-ins in it that count.
 */
check_ins: number, 
/**
 * Finished exercises in it that count.
 */
answers: number, 
/**
 * The date of the last hand-in, if one was made.
 */
last_made_on: string | null, 
/**
 * Check-ins and finished exercises since the last hand-in, on dates that count.
 */
new_since: number, 
/**
 * Dates with check-ins that count.
 */
days: number, };
export type Heads = { 
/**
 * The share times the class, rounded.
 */
about: number, 
/**
 * Low end of the likely range, rounded.
 */
low: number, 
/**
 * High end of the likely range, rounded.
 */
high: number, 
/**
 * Students of the class.
 */
of: number, };
export type HelpNumbers = { 
/**
 * Results of those taught.
 */
answers: number, 
/**
 * Right ones among them.
 */
right: number, 
/**
 * How many would be right by what was known on the day of teaching.
 */
foretold: number, 
/**
 * How many would be right if those taught had also moved as the others did.
 */
expected: number, 
/**
 * How many more than expected are right apart from chance: low end of the likely range (80%).
 */
more_low: number, 
/**
 * High end of it. What is right beyond the expected lies between both.
 */
more_high: number, 
/**
 * Exercises on the concept that those taught practised since then. They are not counted.
 */
practised: number, 
/**
 * Concepts that were not taught again, compared with.
 */
concepts: number, };
export type HelpSays = "rose_more" | "likely_rose_more" | "cannot_tell" | "no_sign" | "too_soon" | "no_answers" | "few_others" | "taught_once_more";
export type HelpView = { 
/**
 * What is said.
 */
says: HelpSays, 
/**
 * The day on which the first or the next verdict is due; none if no later verdict follows.
 */
next_on: string | null, 
/**
 * The last day whose reports were looked at.
 */
until: string | null, 
/**
 * Passes since then that were looked at, 0 to 3.
 */
passes: number, 
/**
 * Students of these who were taught the concept once more. What came after that is left out.
 */
once_more: number, 
/**
 * The numbers behind it; none if nothing was compared.
 */
numbers: HelpNumbers | null, };
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
 * Its source.
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
 * The number of the import.
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
 * How many of them the teacher must look at: refused, quarantined or flagged.
 */
to_check: number, 
/**
 * The first files, at most [`LINES_A_PAGE`]: those that the teacher must look at, then those
 * that brought something, then the others, each in the order of the import.
 */
files: Array<FileReport>, 
/**
 * Whether it was stopped; the files read before count.
 */
cancelled: boolean, 
/**
 * Whether it was undone.
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
 * Its report.
 */
report: ImportReport, } | { "kind": "failed", 
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
 * Its result, once it is over.
 */
result: JobResult | null, };
export type Join = { 
/**
 * The picked pack.
 */
pack: number, 
/**
 * The code of the join slip, as typed.
 */
seat_code: string, 
/**
 * The nickname, 1 to 24 characters; it stays on this device.
 */
nickname: string, 
/**
 * The id of the avatar; it stays on this device.
 */
avatar: string, 
/**
 * The student's language.
 */
language: Language, 
/**
 * Whether the person said that somebody else joined here with this slip.
 */
beside: boolean, };
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
 * The seat code.
 */
code: string, 
/**
 * The PIN signs in two groups.
 */
pin_signs: string, };
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
export type KeptGroup = { 
/**
 * The slot, from 0.
 */
slot: number, 
/**
 * The concept.
 */
concept: ConceptName, 
/**
 * Those who are taught.
 */
members: Array<GroupMember>, 
/**
 * Those who have the concept and explain it.
 */
partners: Array<GroupMember>, 
/**
 * Students who were absent that day and need the concept.
 */
missed: Array<GroupMember>, };
export type Knowledge = "nothing" | "order" | "level";
export type Lacking = { 
/**
 * The seat; none if it is not known.
 */
seat: number | null, 
/**
 * The seat's name.
 */
name: string | null, 
/**
 * What is missing.
 */
what: LackingKind, };
export type LackingKind = { "kind": "quarantined", 
/**
 * Its fingerprint.
 */
fingerprint: string, 
/**
 * The date of the import that brought its first hand-in.
 */
first_seen_on: string, 
/**
 * Hand-ins that wait.
 */
hand_ins: number, } | { "kind": "damaged", 
/**
 * The file's name.
 */
file_name: string, 
/**
 * The date of the import that refused it.
 */
read_on: string, 
/**
 * Why it was refused.
 */
refusal: Refusal, } | { "kind": "damaged_of_nobody", 
/**
 * How many files.
 */
files: number, 
/**
 * The name of the last of them.
 */
file_name: string, 
/**
 * The date of the import that refused it.
 */
read_on: string, } | { "kind": "late", 
/**
 * The date of the newest one.
 */
last_on: string, 
/**
 * School days since, without today.
 */
school_days: number, } | { "kind": "old_pack", 
/**
 * The version that it had.
 */
version: number, 
/**
 * The newest version.
 */
newest: number, 
/**
 * The date of that hand-in.
 */
handed_in_on: string, 
/**
 * Whether year or rotation differ, so that it may show another day.
 */
other_days: boolean, } | { "kind": "pack_with_nobody", 
/**
 * The newest version.
 */
newest: number, 
/**
 * Devices, all with an older one.
 */
devices: number, };
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
 * What: for example `choices`, `hints` or `CFItems`.
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
 * The choice.
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
 * The message of the reader.
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
 * The template, or the element used instead.
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
 * The tag as written.
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
 * The id of the concept.
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
export type LineReading = "name" | "too_long" | "heading" | "no_name" | "full";
export type LineRefused = { 
/**
 * The line, from 1; 0 in a file without lines.
 */
line: number, 
/**
 * The place in a file without lines, such as `CFItems[3].fullStatement`; empty for a
 * table.
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
 * Its area, such as `items-fractions`.
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
 * How often it led to an answer.
 */
count: number, };
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
 * The concepts of the rotation, strand by strand.
 */
concepts: Array<PathConcept>, 
/**
 * The student's focus, at most three concepts.
 */
focus: Array<string>, 
/**
 * The student's goals, at most three. No hand-in holds them.
 */
goals: Array<Goal>, 
/**
 * How many ratings count, one for each concept and date.
 */
rated: number, 
/**
 * How many finished exercises count.
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
 * The name; `None` removes it.
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
export type NamedSeat = { 
/**
 * Its number.
 */
seat: number, 
/**
 * The name, if it has one.
 */
name: string | null, };
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
 * The concepts, 1 to 6.
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
 * The seats; empty for the whole class.
 */
seats: Array<number>, };
export type NewClass = { 
/**
 * The title, 1 to 60 characters.
 */
title: string, 
/**
 * Given names or codes, one for each seat; an empty text is a seat without a name.
 */
names: Array<string>, 
/**
 * The school year.
 */
year: SchoolYear, 
/**
 * The grades whose concepts the class gets.
 */
grades: Array<number>, 
/**
 * Days in the rotation, 1 to 20.
 */
rotation_days: number, 
/**
 * Concepts of a day at most.
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
export type NewDeskLock = { 
/**
 * The passphrase that the desk has now; not needed without a lock.
 */
current: string | null, 
/**
 * The new passphrase, at least 8 characters; `None` removes the lock.
 */
passphrase: string | null, };
export type NewPin = { 
/**
 * The profile's id.
 */
student: string, 
/**
 * The PIN, 4 to 8 digits.
 */
pin: string, 
/**
 * The PIN signs of the slip, as typed.
 */
pin_signs: string, 
/**
 * The seat code of the slip, as typed; needed until the device keeps a hash of the PIN
 * signs.
 */
seat_code: string | null, };
export type NewPractice = { 
/**
 * The class.
 */
class: string, 
/**
 * The bounds, and the test it aims at.
 */
practice: PracticeRules, };
export type NewRotation = { 
/**
 * The class.
 */
class: string, 
/**
 * The ids of the concepts, day by day.
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
 * Exercises of an evening; `None` if it ends after the minutes.
 */
exercises: number | null, 
/**
 * Evenings a week, within the teacher's bounds.
 */
evenings: number, 
/**
 * How the screens look and sound.
 */
appearance: Appearance, };
export type NewTaughtAgain = { 
/**
 * The entry that it replaces.
 */
replaces: number | null, 
/**
 * School date.
 */
date: string, 
/**
 * The concept.
 */
concept: string, 
/**
 * Where the entry came from.
 */
came_from: TaughtFromWhere, 
/**
 * The seats of those who were taught; none for everybody who was there.
 */
seats: Array<number>, 
/**
 * What was done, in the teacher's words.
 */
note: string | null, };
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
 * The name of this exercise in the calls that follow.
 */
exercise: string, 
/**
 * The concept practised.
 */
concept: ConceptName, 
/**
 * Why it is in the queue.
 */
reason: Reason, 
/**
 * 1 entry, 2 expected, 3 stretch.
 */
level: number, 
/**
 * The prompt and what to fill in, without the answer.
 */
item: ItemView, 
/**
 * The hints shown so far.
 */
hints_taken: Array<Array<Block>>, 
/**
 * The confidence that the student gave before answering, if any.
 */
confidence: Confidence | null, 
/**
 * The draft, if there is one.
 */
draft: Draft | null, 
/**
 * A similar exercise with its steps, to be read first. The first exercises of a concept
 * have one in turn.
 */
worked_first: WorkedExample | null, 
/**
 * The progress of the evening.
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
 * How many hand-ins and zips are among them; an import from `opened` reads them.
 */
hand_ins: number, 
/**
 * The last carry file among them; it needs its passphrase.
 */
carry: PickedSealed | null, 
/**
 * The last backup among them; it needs its passphrase.
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
 * The titles of its prerequisites.
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
 * Imports, newest first.
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
 * Whether the concept is in the rotation; only then the class pack has the exercise.
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
 * The date of the import.
 */
made_on: string, 
/**
 * Whether it was undone.
 */
undone: boolean, 
/**
 * The files.
 */
files: Array<OwnFile>, };
export type OwnImportAsked = { 
/**
 * The class.
 */
class: string, 
/**
 * The concept for lines and items that name no concept.
 */
concept: string | null, };
export type OwnImportId = { 
/**
 * The class.
 */
class: string, 
/**
 * Its number in the class.
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
 * The line, cut short.
 */
line: string, 
/**
 * The concept.
 */
concept: ConceptName, 
/**
 * Its first lesson by the list.
 */
date: string, 
/**
 * Whether it was taught last year, which counts from the first school day.
 */
last_year: boolean, 
/**
 * Its first lesson now.
 */
before: string | null, };
export type PacingList = { 
/**
 * Concepts with the date of their first lesson, in the order of the list.
 */
found: Array<PacingFound>, 
/**
 * Lines with a title that is near to some of the class.
 */
near: Array<PacingNear>, 
/**
 * Lines that cannot be used.
 */
missed: Array<PacingMissed>, 
/**
 * How `9/8` was read, if it could be read both ways: the day first or the month.
 */
day_first: boolean | null, };
export type PacingMissed = { 
/**
 * The line, cut short.
 */
line: string, 
/**
 * Why.
 */
trouble: PacingTrouble, };
export type PacingNear = { 
/**
 * The line, cut short.
 */
line: string, 
/**
 * The concepts that it may mean, the likeliest first.
 */
choices: Array<PacingFound>, };
export type PacingText = { 
/**
 * The class.
 */
class: string, 
/**
 * As pasted.
 */
text: string, 
/**
 * Whether `9/8` is the ninth of August; `None` lets the list decide.
 */
day_first: boolean | null, };
export type PacingTrouble = "no_such_concept" | "not_in_rotation" | "no_date" | "outside_year" | "twice";
export type PackFound = { 
/**
 * The pack.
 */
offer: PackOffer, 
/**
 * The students of this device who have that seat already.
 */
joined: Array<Profile>, };
export type PackOffer = { 
/**
 * Its number in [`Join`].
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
 * The version that the device has now.
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
 * The members who likely lack it.
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
 * Probability that the student has the concept; none while the level is not known.
 */
has_it: number | null, 
/**
 * The last rating.
 */
rating: Confidence | null, 
/**
 * The last marked result.
 */
outcome: Outcome | null, 
/**
 * Practice answers.
 */
practice: PracticeSums, };
export type PartShape = "bar" | "circle";
export type PassCell = { 
/**
 * Students who rated it.
 */
rated: number, 
/**
 * Of these, those who chose Not yet or With help.
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
 * Exercises finished.
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
 * Whether it shows the student's goals.
 */
with_goals: boolean, };
export type Phase = "preview" | "practice" | "review";
export type PickedSealed = { 
/**
 * Its number in the call that opens it.
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
 * The PIN signs of the slip, as typed.
 */
pin_signs: string, };
export type PinTyped = { 
/**
 * The profile's id.
 */
student: string, 
/**
 * The PIN, 4 to 8 digits.
 */
pin: string, };
export type PlaceTrouble = "other_tab" | "missing" | "refused" | "full";
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
 * The concept, if chosen on My path; `None` for the queue.
 */
concept: string | null, 
/**
 * Whether to go on after the end of the evening.
 */
more: boolean, };
export type PracticeRules = { 
/**
 * The fewest minutes of an evening, at least 1.
 */
minutes_least: number, 
/**
 * The most minutes of an evening, at most 120.
 */
minutes_most: number, 
/**
 * The fewest evenings of a week, at least 1.
 */
evenings_least: number, 
/**
 * The most evenings of a week, at most 7.
 */
evenings_most: number, 
/**
 * The date of the next test, within the school year.
 */
test_on?: string | null, };
export type PracticeStep = { "kind": "exercise" } & OpenExercise | { "kind": "done" } & Summary | { "kind": "nothing_yet" };
export type PracticeSums = { 
/**
 * Right without help.
 */
alone: number, 
/**
 * Right with help.
 */
with_help: number, 
/**
 * Wrong.
 */
wrong: number, };
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
 * Whether there is space to work or write in; otherwise it takes as little paper as possible.
 */
roomy: boolean, };
export type PrintPaper = "a4" | "letter";
export type Profile = { 
/**
 * The name of the student's store on this device.
 */
id: string, 
/**
 * The nickname that the student typed.
 */
nickname: string, 
/**
 * The id of the student's avatar.
 */
avatar: string, 
/**
 * The student's language.
 */
language: Language, 
/**
 * How the screens look and sound.
 */
appearance: Appearance, 
/**
 * The class's title from its class pack.
 */
class_title: string, 
/**
 * Whether the student must type a PIN.
 */
has_pin: boolean, 
/**
 * Whether this device keeps a hash of the slip's PIN signs, so that a new PIN needs no
 * seat code.
 */
has_pin_signs: boolean, };
export type ProjectorConcept = { 
/**
 * The concept.
 */
concept: ConceptName, 
/**
 * An exercise to discuss.
 */
exercise: SampleExercise | null, };
export type ProjectorDay = { 
/**
 * Day of the rotation, from 1; none after the year.
 */
day: number | null, 
/**
 * Every concept of the day, in the order of the review.
 */
concepts: Array<ProjectorConcept>, };
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
 * Its size, or the size at which reading stopped.
 */
found_bytes: number, 
/**
 * The limit.
 */
most_bytes: number, } | { "code": "unpacks_too_large", 
/**
 * The limit.
 */
most_bytes: number, } | { "code": "too_many_entries", 
/**
 * The limit.
 */
most: number, } | { "code": "too_much_at_once" } | { "code": "not_ours" } | { "code": "wrong_class" } | { "code": "damaged" } | { "code": "bad_signature" } | { "code": "newer_format", 
/**
 * Its format.
 */
found: number, 
/**
 * The newest format that this program knows.
 */
known: number, } | { "code": "bad_content", 
/**
 * The place, as a path into the content.
 */
at: string, } | { "code": "seat_unknown" } | { "code": "seat_full" } | { "code": "not_newer", 
/**
 * Its version.
 */
found: number, 
/**
 * The version on the device.
 */
held: number, } | { "code": "wrong_passphrase" } | { "code": "too_much_work", 
/**
 * Its scrypt work factor, log2 of N.
 */
found: number, 
/**
 * The limit.
 */
most: number, } | { "code": "unsafe_name" } | { "code": "unreadable" };
export type RemoveStudent = { 
/**
 * The profile's id.
 */
student: string, };
export type Removed = { 
/**
 * Its number, to restore or discard it.
 */
number: number, 
/**
 * The class.
 */
class: string, 
/**
 * The title of the class.
 */
title: string, 
/**
 * What was removed.
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
name: string | null, } | { "kind": "moved", 
/**
 * The number of the seat.
 */
seat: number, 
/**
 * The student's name.
 */
name: string | null, 
/**
 * The title of the other class.
 */
to: string, } | { "kind": "own_exercise" } | { "kind": "own_import" };
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
 * The values of its fields.
 */
values: ReportValues, 
/**
 * The options of the print.
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
export type ReportField = { "kind": "seat" } | { "kind": "seat_or_all" } | { "kind": "group" } | { "kind": "minutes" } | { "kind": "day" } | { "kind": "concepts" } | { "kind": "level" } | { "kind": "count", 
/**
 * The most.
 */
most: number, } | { "kind": "key" } | { "kind": "names" } | { "kind": "numbers" } | { "kind": "paper" } | { "kind": "space" } | { "kind": "halves" };
export type ReportInfo = { 
/**
 * Its name in `print` and `preview`.
 */
name: string, 
/**
 * Its section in the list.
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
 * The fields it asks for.
 */
fields: Array<ReportField>, 
/**
 * Whether it has a preview.
 */
previewed: boolean, };
export type ReportPage = { 
/**
 * Its title.
 */
title: string, 
/**
 * Class and date, shown under the title.
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
export type ReportSection = "sheet" | "seat_sheet" | "warm_up" | "chart" | "report" | "table" | "slips";
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
 * For [`ReportField::Seat`] and [`ReportField::SeatOrAll`].
 */
seat?: number, 
/**
 * For [`ReportField::Group`]: the concept.
 */
concept?: string, 
/**
 * For [`ReportField::Group`] and [`ReportField::SeatOrAll`]: the seats.
 */
seats?: Array<number>, 
/**
 * For [`ReportField::Minutes`].
 */
minutes?: number, 
/**
 * For [`ReportField::Day`].
 */
date?: string, 
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
seed?: number, 
/**
 * For [`ReportField::Halves`].
 */
halves?: boolean, };
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
texts: Array<string>, } | { "kind": "boxes", 
/**
 * As typed, one for each box.
 */
texts: Array<string>, } | { "kind": "two_parts", 
/**
 * The first part.
 */
first: Response, 
/**
 * The second part.
 */
second: Response, };
export type RestoreCopy = { 
/**
 * The store.
 */
store: StoreName, 
/**
 * The name of the copy.
 */
name: string, };
export type Restored = { 
/**
 * The store.
 */
store: StoreName, 
/**
 * Whether it replaced another store, which is now in quarantine.
 */
quarantined: boolean, 
/**
 * What the screens show now.
 */
start: Start, };
export type ResultSums = { 
/**
 * Right.
 */
right: number, 
/**
 * Wrong.
 */
wrong: number, };
export type Roster = { 
/**
 * The title of the class in the file, or the file's name; empty if there is none.
 */
title: string, 
/**
 * Its lines in order; empty ones are left out.
 */
lines: Array<RosterLine>, };
export type RosterFile = { 
/**
 * The classes in them, by title.
 */
classes: Array<Roster>, };
export type RosterLine = { 
/**
 * Its number in the list, from 1.
 */
line: number, 
/**
 * The given name, a code, or the words of a heading.
 */
first: string, 
/**
 * The family name. It is shown to be checked, and kept only if the teacher chooses so.
 */
last: string, 
/**
 * How it was understood.
 */
reading: LineReading, };
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
export type Rule = "already_here" | "contradiction" | "digits" | "elsewhere" | "empty" | "evenings" | "in_rotation" | "locked" | "minutes" | "no_exercises" | "missing" | "no_reports" | "not_empty" | "nothing_to_show" | "not_text" | "older" | "open" | "order" | "range" | "running" | "sample_open" | "taken" | "test_on" | "too_few" | "too_few_changed" | "too_long" | "too_many" | "unreadable";
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
 * The right answer.
 */
answer: Array<Block>, 
/**
 * The worked steps.
 */
steps: Array<Array<Block>>, 
/**
 * A misconception, if one leads to a wrong answer here.
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
 * The feedback to that answer.
 */
say: Say, };
export type SavesPacks = { 
/**
 * The class.
 */
class: string, 
/**
 * Whether it does.
 */
saves: boolean, };
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
 * Given name or code, if the teacher entered one.
 */
name: string | null, 
/**
 * The code on the join slip.
 */
code: string, 
/**
 * The devices that handed in for this seat, in the order they came.
 */
devices: Array<SeatDevice>, 
/**
 * The newest report from this seat.
 */
newest_report: string | null, };
export type SeatCodeError = { "code": "length", 
/**
 * The number of signs, without spaces and dashes.
 */
found: number, 
/**
 * The number of signs that it should have.
 */
expected: number, } | { "code": "sign", 
/**
 * The sign.
 */
sign: string, } | { "code": "check" } | { "code": "other_class" } | { "code": "other_seat" };
export type SeatCodeRead = { 
/**
 * The students of this device who have that seat already.
 */
joined: Array<Profile>, };
export type SeatCodeTyped = { 
/**
 * The picked pack.
 */
pack: number, 
/**
 * The typed code.
 */
seat_code: string, };
export type SeatDevice = { 
/**
 * Its number at this desk. Two devices never have the same.
 */
id: number, 
/**
 * Its fingerprint, as its settings show it.
 */
fingerprint: string, 
/**
 * Whether its hand-ins count.
 */
state: SeatDeviceState, 
/**
 * The date of the import that brought its first hand-in.
 */
first_seen_on: string, 
/**
 * How many of its hand-ins the desk keeps.
 */
hand_ins: number, 
/**
 * Check-ins and practice results in its newest hand-in.
 */
entries: number, };
export type SeatDeviceState = "accepted" | "quarantined" | "rejected";
export type SeatHoldings = { 
/**
 * Kept hand-ins.
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
 * Observations.
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
export type SeatMove = { 
/**
 * The class that the student leaves.
 */
class: string, 
/**
 * The seat there.
 */
seat: number, 
/**
 * The class that the student joins.
 */
to: string, };
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
 * The amount done.
 */
amount: AssignedAmount, };
export type Sentence = { 
/**
 * What it says, with its reason.
 */
says: SentenceKind, 
/**
 * The concept that it is about.
 */
concept: ConceptName | null, 
/**
 * How certain it is.
 */
certainty: Certainty, 
/**
 * What can be done about it in one press.
 */
actions: Array<SentenceAction>, };
export type SentenceAction = "show" | "group" | "assign" | "print";
export type SentenceKind = { "kind": "talk", 
/**
 * The day of that review.
 */
date: string, 
/**
 * Whether that is today.
 */
is_today: boolean, 
/**
 * How to discuss it.
 */
way: TalkWay, 
/**
 * The minutes that it takes.
 */
minutes: number, 
/**
 * How many present students are expected to get it wrong; none while the level is not
 * known.
 */
wrong: number | null, } | { "kind": "sure_and_wrong", 
/**
 * Students who last chose On my own or Could teach it.
 */
sure: number, 
/**
 * Students who rated it.
 */
rated: number, } | { "kind": "weak", 
/**
 * How many students have it; none while the level is not known.
 */
heads: Heads | null, 
/**
 * Students who last chose Not yet or With help.
 */
low: number, 
/**
 * Students who rated it.
 */
rated: number, } | { "kind": "nothing_weak", 
/**
 * How many concepts those are.
 */
concepts: number, } | { "kind": "together", 
/**
 * The students, by seat.
 */
students: Array<NamedSeat>, 
/**
 * Whether the level is known, so that each likely needs it. Otherwise each last chose Not
 * yet or With help.
 */
estimated: boolean, } | { "kind": "taught_again", 
/**
 * What is said there; only what answers were compared for.
 */
help: HelpSays, 
/**
 * School date of the teaching.
 */
since: string, 
/**
 * Students who were taught.
 */
taught: number, 
/**
 * The day to look again, if it cannot be told yet.
 */
next_on: string | null, } | { "kind": "sure_but_wrong", 
/**
 * The students, by seat.
 */
students: Array<NamedSeat>, } | { "kind": "unsure_but_right", 
/**
 * The students, by seat.
 */
students: Array<NamedSeat>, };
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
 * Minutes planned for tonight. They are fewer if the evening before ran over.
 */
minutes_planned: number, 
/**
 * Exercises planned for tonight; nothing if the evening ends by minutes.
 */
exercises_planned: number | null, 
/**
 * The next concepts of the queue, at most six.
 */
ahead: Array<Ahead>, };
export type ShownFolder = { 
/**
 * Whether the class has a class folder and this device can use one.
 */
offered: boolean, 
/**
 * Its path or name on this device; `None` until it is chosen.
 */
folder: string | null, 
/**
 * The path or name of the one that this student stopped using.
 */
stopped: string | null, 
/**
 * The date on which the device last reached it.
 */
reached_on: string | null, 
/**
 * The date of the hand-in that is in it.
 */
left_on: string | null, 
/**
 * Whether there is something new to leave.
 */
waiting: boolean, 
/**
 * Why the folder cannot be used now.
 */
trouble: FolderTrouble | null, 
/**
 * Class packs in it that are of another class, have other keys, or cannot be read.
 */
other_packs: number, };
export type Sign = "less" | "equal" | "greater" | "at_most" | "at_least" | "not_equal" | "about" | "blank";
export type SlipChange = { 
/**
 * The profile's id.
 */
student: string, 
/**
 * The picked pack.
 */
pack: number, 
/**
 * The code of the new slip, as typed.
 */
seat_code: string, 
/**
 * Of the slip that the student has now, as typed: the PIN signs if the device keeps a hash of
 * them, otherwise the seat code.
 */
earlier: string, };
export type Start = { 
/**
 * Today; in the sample class the latest weekday.
 */
today: string, 
/**
 * The version of the program.
 */
version: string, 
/**
 * Own data or the sample class.
 */
world: World, 
/**
 * Whether the sample class exists.
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
 * Stores that cannot be opened.
 */
damaged: Array<DamagedStore>, 
/**
 * School years that are over and still have data here.
 */
years_over: Array<YearOver>, 
/**
 * Removals of the desk that can be undone, newest first.
 */
removed: Array<Removed>, 
/**
 * The lock of the person's own desk. While it is locked, its classes are left out.
 */
desk_lock: DeskLock, 
/**
 * Whether this device has a share sheet.
 */
shares: boolean, 
/**
 * Whether this device can use a class folder.
 */
class_folders: boolean, 
/**
 * Whether the program has the teacher's side and the sample class.
 */
has_desk: boolean, 
/**
 * Whether a student can print.
 */
prints: boolean, 
/**
 * Whether a browser keeps the data. It may clear them.
 */
in_browser: boolean, 
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
 * Its name in [`RestoreCopy`].
 */
name: string, 
/**
 * Why it is there.
 */
kind: CopyKind, 
/**
 * The day it was made, if known. A day in the future is not.
 */
made_on: string | null, };
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
 * The student.
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
 * Probability that the student has it; none while the level is not known.
 */
has_it: number | null, 
/**
 * The last rating.
 */
rating: Confidence | null, 
/**
 * The last marked result.
 */
outcome: Outcome | null, 
/**
 * Practice answers.
 */
practice: PracticeSums, 
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
 * The day; `None` for today.
 */
date: string | null, };
export type StudentId = { 
/**
 * The profile's id.
 */
student: string, };
export type StudentPage = { 
/**
 * The student.
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
 * Probability that the student has it; none without a report, and while the level is
 * not known.
 */
has_it: number | null, 
/**
 * The check-ins, oldest first.
 */
history: Array<DatedReport>, 
/**
 * Observations, oldest first.
 */
seen: Array<DatedObservation>, 
/**
 * Practice answers.
 */
practice: PracticeSums, 
/**
 * Days since the newest report on it.
 */
newest_days: number | null, 
/**
 * Assigned practice of this concept.
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
 * The fewest minutes that the teacher allows.
 */
minutes_least: number, 
/**
 * The most minutes that the teacher allows.
 */
minutes_most: number, 
/**
 * Exercises of an evening; nothing if it ends by minutes.
 */
exercises: number | null, 
/**
 * The fewest exercises that fit the teacher's bounds in minutes.
 */
exercises_least: number, 
/**
 * The most exercises that fit the teacher's bounds in minutes.
 */
exercises_most: number, 
/**
 * Evenings of a week.
 */
evenings: number, 
/**
 * The fewest evenings that the teacher allows.
 */
evenings_least: number, 
/**
 * The most evenings that the teacher allows.
 */
evenings_most: number, 
/**
 * The date of the test that practice aims at; nothing if none lies ahead.
 */
test_on: string | null, 
/**
 * How the screens look and sound.
 */
appearance: Appearance, 
/**
 * The fingerprint of this device, which the teacher's desk shows too.
 */
fingerprint: string, };
export type Summary = { 
/**
 * Exercises finished tonight.
 */
finished: number, 
/**
 * Of these, right without help.
 */
alone: number, 
/**
 * Of these, right with a hint or at the second try.
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
 * Evenings of a week that the student wants to practise.
 */
evenings_planned: number, 
/**
 * The concepts practised tonight, in the order of their first exercises.
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
 * The last rating in the class's review, if any.
 */
said: Confidence | null, 
/**
 * Exercises by the confidence that the student gave before answering, `NotYet` first.
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
 * Of these, right without help.
 */
alone: number, 
/**
 * Of these, right with a hint or at the second try.
 */
with_help: number, };
export type TalkAsked = { 
/**
 * The class.
 */
class: string, 
/**
 * The minutes, 1 to 20.
 */
minutes: number, 
/**
 * Which of the next two school days.
 */
day: TalkDay, };
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
 * Whether it was discussed on that day.
 */
talked: boolean, 
/**
 * How to discuss it; none before the first lesson or without a report.
 */
way: TalkWay | null, 
/**
 * The minutes that it takes.
 */
minutes: number, 
/**
 * Its value: how many more students are expected to get it right afterwards. This and the
 * numbers below are none while the level is not known.
 */
worth: number | null, 
/**
 * Estimated share of the class that has it; none without a report.
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
 * How many present students are expected to get it wrong.
 */
expected_wrong: number | null, 
/**
 * How many of these last rated On my own or Could teach it.
 */
sure_wrong: number | null, 
/**
 * Its trend.
 */
trend: Trend, 
/**
 * Whether it was discussed in this pass or the last.
 */
talked_lately: boolean, 
/**
 * Its dependants whose first lesson is within ten school days.
 */
dependants_soon: Array<ConceptName>, 
/**
 * The commonest misconceptions.
 */
misconceptions: Array<MisconceptionCount>, 
/**
 * An exercise to discuss.
 */
exercise: SampleExercise | null, };
export type TalkDay = "first" | "second";
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
 * Whether it was discussed.
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
 * Whether that is today; otherwise today has no school.
 */
is_today: boolean, 
/**
 * The next two school days that a plan can be for; fewer at the end of the year.
 */
school_days: Array<string>, 
/**
 * Day of the rotation, from 1; none after the year.
 */
day: number | null, 
/**
 * Minutes for the talk.
 */
minutes: number, 
/**
 * Minutes for the chosen concepts.
 */
minutes_used: number, 
/**
 * Whether there are results and practice enough for shares. Otherwise the plan goes by the
 * order of the concepts alone.
 */
level_known: boolean, 
/**
 * Every concept of the day: first the chosen ones, then the others, each in the order of the review.
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
export type TaughtAgainEntry = { 
/**
 * Its number at this desk.
 */
id: number, 
/**
 * School date.
 */
date: string, 
/**
 * The concept.
 */
concept: ConceptName, 
/**
 * Where the entry came from.
 */
came_from: TaughtFromWhere, 
/**
 * Whether it was for everybody who was there.
 */
whole_class: boolean, 
/**
 * Those who were taught.
 */
members: Array<TaughtMember>, 
/**
 * What was done, in the teacher's words.
 */
note: string | null, 
/**
 * Whether it helped.
 */
help: HelpView, };
export type TaughtAgainId = { 
/**
 * The class.
 */
class: string, 
/**
 * Its number at this desk.
 */
entry: number, };
export type TaughtAgainLog = { 
/**
 * Today.
 */
today: string, 
/**
 * The first day of the school year.
 */
first_day: string, 
/**
 * The latest school day up to today; none before the first one.
 */
school_day: string | null, 
/**
 * Concepts that can be noted: those of the rotation that have been taught, in their order.
 */
concepts: Array<ConceptName>, 
/**
 * Every seat.
 */
seats: Array<GroupMember>, 
/**
 * The entries, latest date first.
 */
entries: Array<TaughtAgainEntry>, };
export type TaughtAgainNoted = { 
/**
 * The class.
 */
class: string, 
/**
 * What is noted.
 */
entry: NewTaughtAgain, };
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
 * The date; `None` if the concept is not taught this year.
 */
date: string | null, };
export type TaughtFromWhere = "talk" | "group" | "assignment" | "hand";
export type TaughtMember = { 
/**
 * The seat.
 */
seat: number, 
/**
 * Its name.
 */
name: string | null, 
/**
 * What the teacher recorded on that day: whether the student has it.
 */
recorded: boolean | null, };
export type Text = { [tag in Language]?: string };
export type Theme = "system" | "light" | "dark" | "contrast" | "contrast_dark";
export type Thing = "assignment" | "class" | "concept" | "copy" | "desk" | "device" | "entry" | "exercise" | "file" | "import" | "job" | "pack" | "removed" | "report" | "sample" | "seat" | "student";
export type Today = { 
/**
 * The date shown.
 */
date: string, 
/**
 * Today's date.
 */
today: string, 
/**
 * The pass from 1; nothing if `date` is no school day.
 */
pass: number | null, 
/**
 * The day of the rotation from 1; nothing if `date` is no school day.
 */
day: number | null, 
/**
 * Days in the rotation.
 */
rotation_days: number, 
/**
 * The date for which the student said the day, if that decides the day shown.
 */
said_on: string | null, 
/**
 * The concepts in the order of the review, then others that were marked on this date.
 */
concepts: Array<TodayConcept>, 
/**
 * The next school day, if `date` is none.
 */
next_school_day: string | null, 
/**
 * Recent school days that have a concept without a rating, newest first, at most five.
 */
catch_up: Array<string>, };
export type TodayConcept = { 
/**
 * The concept.
 */
concept: ConceptName, 
/**
 * Its phase on this date.
 */
phase: Phase, 
/**
 * The rating, if one was given.
 */
confidence: Confidence | null, 
/**
 * The outcome, if it was marked.
 */
outcome: Outcome | null, 
/**
 * Whether it is in the review of this date; otherwise it was marked before the days moved.
 */
in_review: boolean, };
export type TransferAsked = { 
/**
 * The class.
 */
class: string, 
/**
 * The seat.
 */
seat: number, 
/**
 * Whether the file has the student's name.
 */
with_name: boolean, 
/**
 * The passphrase, at least 8 characters.
 */
passphrase: string, };
export type TransferHoldings = { 
/**
 * Ratings and outcomes from devices.
 */
check_ins: number, 
/**
 * Practice results.
 */
practice: number, 
/**
 * Entries from paper.
 */
paper: number, 
/**
 * The date of the oldest of them.
 */
first_date: string | null, 
/**
 * The date of the newest.
 */
last_date: string | null, };
export type TransferOpened = { 
/**
 * The class that the student joins.
 */
class: string, 
/**
 * The picked file.
 */
picked: PickedSealed, 
/**
 * Its passphrase.
 */
passphrase: string, };
export type TransferTaken = { 
/**
 * The new seat.
 */
seat: number, 
/**
 * The student's name, if the file has it.
 */
name: string | null, 
/**
 * What the file holds.
 */
holds: TransferHoldings, 
/**
 * Entries of it that are dated outside this class's year or in the future.
 */
outside_year: number, 
/**
 * Concepts of it that are not in this class's rotation.
 */
other_concepts: number, };
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
 * The wait in seconds.
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
export type VisitAsked = { 
/**
 * Whether the student is done for now. Otherwise a hand-in is left once nothing new came
 * between two visits.
 */
done: boolean, };
export type Visited = { 
/**
 * The students with a newer class pack.
 */
took_pack: Array<string>, 
/**
 * The students whose hand-in has been waiting for several school days.
 */
late: Array<string>, 
/**
 * Whether something is under way or waiting.
 */
busy: boolean, };
export type VoiceMissing = "speech_dispatcher" | "system_voice" | "tablet_voice" | "everything";
export type WarmUp = { 
/**
 * The school day it is for; none after the year.
 */
date: string | null, 
/**
 * Day of the rotation, from 1; none after the year.
 */
day: number | null, 
/**
 * The days to choose from: today if it has school, and the next school day.
 */
days: Array<WarmUpDay>, 
/**
 * Every concept of the day in the order of the review, also those left out.
 */
concepts: Array<WarmUpConcept>, };
export type WarmUpAsked = { 
/**
 * The class.
 */
class: string, 
/**
 * The school date; none for today or the next school day.
 */
date: string | null, };
export type WarmUpChange = { 
/**
 * The class.
 */
class: string, 
/**
 * The school date.
 */
date: string, 
/**
 * The concept.
 */
concept: string, 
/**
 * The choice, which replaces the one before.
 */
choice: WarmUpChoice, };
export type WarmUpChoice = { 
/**
 * How often the exercise was swapped for another.
 */
swaps: number, 
/**
 * The level; none for that of the phase.
 */
level: Level | null, 
/**
 * The id of an own exercise in its place.
 */
own: string | null, 
/**
 * Whether the concept is left out.
 */
left_out: boolean, };
export type WarmUpConcept = { 
/**
 * The concept.
 */
concept: ConceptName, 
/**
 * Its phase on that day.
 */
phase: Phase, 
/**
 * The level of its exercise.
 */
level: Level, 
/**
 * What the teacher chose.
 */
choice: WarmUpChoice, 
/**
 * The own exercises of the concept.
 */
own: Array<WarmUpOwn>, 
/**
 * Its exercise, without a misconception; none for a concept without exercises.
 */
exercise: SampleExercise | null, };
export type WarmUpDay = { 
/**
 * The school date.
 */
date: string, 
/**
 * Whether that is today.
 */
is_today: boolean, };
export type WarmUpOwn = { 
/**
 * Its id.
 */
id: string, 
/**
 * Its question, as plain text.
 */
question: string, 
/**
 * The language of the question, if it is missing in the language of the screens.
 */
shown_in?: Language, };
export type Weight = { 
/**
 * What is written on each.
 */
label: Expr, 
/**
 * How many.
 */
count: number, };
export type WhoHasNot = { 
/**
 * Today's date.
 */
today: string, 
/**
 * School days without a hand-in until a seat is listed.
 */
school_days: number, 
/**
 * Version of the last class pack; 0 if none was made.
 */
pack_version: number, 
/**
 * A line for each thing that is missing: what waits for the teacher first.
 */
lacking: Array<Lacking>, 
/**
 * Seats that never handed in, since the first class pack or so long that it is late.
 */
not_joined: Array<NamedSeat>, };
export type WhoHasNotAsked = { 
/**
 * The class.
 */
class: string, 
/**
 * School days without a hand-in until a seat is listed, 1 to 40.
 */
school_days: number, };
export type WithoutFont = { 
/**
 * The seat whose name it is; `None` for the title of the class.
 */
seat: number | null, 
/**
 * The words.
 */
words: string, 
/**
 * The signs, which are printed as question marks.
 */
signs: string, };
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
 * The choices, or the things to put in order; empty for other entries.
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
 * The last school day of the class.
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
  desk_lock: { args: Nothing; out: DeskLock };
  unlock_desk: { args: DeskPassphrase; out: Unlocked };
  lock_desk: { args: Nothing; out: DeskLock };
  use_desk: { args: Nothing; out: Nothing };
  set_desk_lock: { args: NewDeskLock; out: Unlocked };
  set_desk_idle: { args: DeskIdle; out: DeskLock };
  begin_new_desk: { args: Nothing; out: Restored };
  projector_classes: { args: Nothing; out: Array<ClassTitle> };
  projector: { args: ClassId; out: ProjectorDay };
  remove_student: { args: RemoveStudent; out: Start };
  remove_everything: { args: Nothing; out: Start };
  speak: { args: ReadAloud; out: Nothing };
  stop_speaking: { args: Nothing; out: Nothing };
}
export interface StudentCalls {
  pick_class_pack: { args: Nothing; out: PackOffer | null };
  check_seat_code: { args: SeatCodeTyped; out: SeatCodeRead };
  join: { args: Join; out: Profile };
  change_slip: { args: SlipChange; out: Profile };
  today: { args: StudentDay; out: Today };
  check_in: { args: CheckInTap; out: Array<string> };
  say_day: { args: DaySaid; out: Today };
  practice: { args: PracticeAsked; out: PracticeStep };
  say_confidence: { args: ConfidenceSaid; out: OpenExercise };
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
  set_pin: { args: NewPin; out: Nothing };
  remove_pin: { args: StudentId; out: Nothing };
  reset_pin: { args: PinReset; out: Nothing };
  make_carry: { args: CarryAsked; out: FileMade };
  pick_carry: { args: Nothing; out: PickedSealed | null };
  take_carry: { args: OpenSealed; out: CarryDone };
  print_practice: { args: StudentPrint; out: FileMade };
  print_path: { args: PathPrint; out: FileMade };
  pick_shown_folder: { args: Nothing; out: FolderShown | null };
  pack_for_code: { args: FolderCode; out: PackFound };
  shown_folder: { args: StudentId; out: ShownFolder };
  show_folder: { args: StudentId; out: ShownFolder };
  stop_shown_folder: { args: StudentId; out: ShownFolder };
  use_shown_folder: { args: StudentId; out: ShownFolder };
  visit_folders: { args: VisitAsked; out: Visited };
}
export interface DeskCalls {
  read_roster: { args: RosterText; out: Roster };
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
  move_seat: { args: SeatMove; out: SeatId };
  move_device: { args: DeviceMove; out: ClassSetup };
  transfer_holdings: { args: SeatId; out: TransferHoldings };
  make_transfer: { args: TransferAsked; out: FileMade };
  pick_transfer: { args: Nothing; out: PickedSealed | null };
  take_transfer: { args: TransferOpened; out: TransferTaken };
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
  class_folder: { args: Nothing; out: ClassFolderState };
  name_class_folder: { args: Nothing; out: ClassFolderState };
  stop_class_folder: { args: Nothing; out: ClassFolderState };
  use_class_folder: { args: Nothing; out: ClassFolderState };
  export_class: { args: ClassKeyAsked; out: FileMade };
  set_saves_packs: { args: SavesPacks; out: ClassSetup };
  pick_class_key: { args: Nothing; out: PickedSealed | null };
  import_class: { args: OpenSealed; out: Nothing };
  decide_device: { args: DeviceDecision; out: ClassSetup };
  discard_device: { args: DeviceOfSeat; out: ClassSetup };
  board: { args: ClassId; out: Board };
  group_board: { args: GroupBoard; out: Board };
  comparison: { args: ClassId; out: Comparison };
  class_now: { args: ClassId; out: ClassNow };
  student_page: { args: SeatId; out: StudentPage };
  talk: { args: TalkAsked; out: TalkView };
  concept_to_show: { args: ClassConcept; out: ProjectorConcept };
  note_talk: { args: TalkNoted; out: Nothing };
  warm_up: { args: WarmUpAsked; out: WarmUp };
  change_warm_up: { args: WarmUpChange; out: WarmUp };
  groups_desk: { args: ClassId; out: GroupsDesk };
  suggest_groups: { args: GroupsAsked; out: GroupsView };
  score_groups: { args: GroupsEdited; out: GroupsView };
  keep_groups: { args: GroupsKept; out: GroupsDesk };
  group_page: { args: GroupPageAsked; out: GroupPage };
  record_group: { args: GroupResult; out: GroupsDesk };
  taught_again: { args: ClassId; out: TaughtAgainLog };
  note_taught_again: { args: TaughtAgainNoted; out: TaughtAgainLog };
  drop_taught_again: { args: TaughtAgainId; out: TaughtAgainLog };
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
  without_font: { args: ClassId; out: Array<WithoutFont> };
  own_desk: { args: ClassId; out: OwnDesk };
  import_own_exercises: { args: OwnImportAsked; out: OwnDesk | null };
  undo_own_import: { args: OwnImportId; out: OwnDesk };
  remove_own_exercise: { args: OwnExerciseId; out: OwnDesk };
  own_exercise: { args: OwnExerciseId; out: OwnExercisePage };
  try_own_exercise: { args: OwnExerciseTry; out: OwnTried };
  pick_concepts: { args: ClassId; out: CatalogueReading | null };
  import_concepts: { args: ConceptsPicked; out: OwnDesk };
  class_day: { args: ClassId; out: ClassDay };
  close_day: { args: DayClosed; out: ClassDay };
  who_has_not: { args: WhoHasNotAsked; out: WhoHasNot };
}
export type Calls = DeviceCalls & StudentCalls & DeskCalls;
