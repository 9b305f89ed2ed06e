//! Makes the share-safe table of a class, and logs its releases. Rules and sources:
//! `docs/insight.md`, "Share-safe tables".

use super::views::{
    ShareAudit, ShareBounds, ShareRelease, ShareRow, ShareShown, ShareStep, ShareTable,
};
use crate::class::OpenClass;
use crate::class::marks::Marks;
use crate::error::{DeskError, Field, Rule};
use crate::estimate::counted::counted;
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::Language;
use surefoot_catalogue::rotation::Phase;
use surefoot_insight::disclosure::{
    CompletionLimits, CountedRating, FEWEST_COUNTS, RatingKey, ReleasedRow, RowCounts,
    SMALLEST_GROUP, Step, audit, band, check_row, choose_step, complete, primary_cells,
    protection_width, strand_rows,
};
use surefoot_record::ConceptName;
use surefoot_store::DeskStore;
use surefoot_store::desk::ReleasedRating;

/// A share-safe table, with the ratings that its rows count.
pub struct MadeShareTable {
    /// The table.
    pub table: ShareTable,
    released: Vec<ReleasedRow>,
}

/// A concept with its last ratings.
struct Rated {
    concept: ConceptName,
    counts: RowCounts,
    ratings: BTreeMap<RatingKey, CountedRating>,
}

/// The share-safe table of a class: for each concept past its first lesson, how many students last
/// rated Not yet or With help.
pub fn share_table(
    desk: &DeskStore,
    class: &OpenClass,
    language: Language,
    today: NaiveDate,
) -> Result<ShareTable, DeskError> {
    Ok(make_share_table(desk, class, language, today)?.table)
}

/// Makes the same table, to be released.
pub fn make_share_table(
    desk: &DeskStore,
    class: &OpenClass,
    language: Language,
    today: NaiveDate,
) -> Result<MadeShareTable, DeskError> {
    let (strands, concepts) = last_ratings(desk, class, language, today)?;
    let log = released(desk, class)?;
    let mut made = set(&strands, &concepts, &log);
    made.table.class_title = class.row.title.clone();
    made.table.date = today;
    let unchanged = made.unchanged;
    made.table.release = if !made.table.audit.safe || made.released.is_empty() && unchanged == 0 {
        ShareRelease::Nothing
    } else if made.released.is_empty() {
        ShareRelease::TooFewChanged {
            unchanged,
            least: SMALLEST_GROUP,
        }
    } else {
        ShareRelease::Allowed {
            earlier: desk.release_count(&class.row.id)?,
            unchanged,
        }
    };
    Ok(MadeShareTable {
        table: made.table,
        released: made.released,
    })
}

/// The strands, and the last rating of each student for each concept past its first lesson.
fn last_ratings(
    desk: &DeskStore,
    class: &OpenClass,
    language: Language,
    today: NaiveDate,
) -> Result<(Vec<String>, Vec<Rated>), DeskError> {
    let marks = Marks::of(class)?;
    let tokens: BTreeMap<u32, &str> = (class.seats.iter())
        .map(|seat| (seat.number, seat.token.as_str()))
        .collect();
    let mut last: BTreeMap<&str, BTreeMap<u32, (RatingKey, CountedRating)>> = BTreeMap::new();
    let counted = counted(desk, class, today)?;
    // A student's check-ins come in the order of their sequences, so the last one wins.
    for entry in &counted.check_ins {
        let (Some(rating), Some(token)) = (entry.confidence, tokens.get(&entry.seat)) else {
            continue;
        };
        let (date, concept) = (entry.date, entry.concept.as_str());
        let key = (marks.seat(token)?, marks.day(token, concept, date)?);
        let rating = CountedRating {
            mark: marks.rating(token, concept, date, entry.sequence, rating)?,
            low: rating.needs_help(),
            gone: false,
        };
        (last.entry(concept).or_default()).insert(entry.seat, (key, rating));
    }
    let mut strands: Vec<String> = Vec::new();
    let mut concepts = Vec::new();
    for id in class.facts.by_strand() {
        if class.facts.phase(id, today) == Phase::Preview {
            continue;
        }
        let concept = class.facts.name(id, language);
        let strand = strands
            .iter()
            .position(|strand| *strand == concept.strand)
            .unwrap_or_else(|| {
                strands.push(concept.strand.clone());
                strands.len() - 1
            });
        let ratings = (last.remove(id).unwrap_or_default().into_values()).collect();
        concepts.push(Rated {
            concept,
            counts: counts_of(strand, &ratings),
            ratings,
        });
    }
    Ok((strands, concepts))
}

fn counts_of(strand: usize, ratings: &BTreeMap<RatingKey, CountedRating>) -> RowCounts {
    let count = |n: usize| u32::try_from(n).unwrap_or(u32::MAX);
    RowCounts {
        strand,
        reporters: count(ratings.len()),
        low: count(ratings.values().filter(|rating| rating.low).count()),
    }
}

/// The rows that were released before.
fn released(desk: &DeskStore, class: &OpenClass) -> Result<Vec<ReleasedRow>, DeskError> {
    let marks = Marks::of(class)?;
    let present: BTreeSet<String> = (class.seats.iter())
        .map(|seat| marks.seat(&seat.token))
        .collect::<Result<_, _>>()?;
    let mut rows: BTreeMap<(i64, String), BTreeMap<RatingKey, CountedRating>> = BTreeMap::new();
    for (place, rating) in desk.released_ratings(&class.row.id)? {
        let gone = !present.contains(&rating.seat_mark);
        rows.entry((place, rating.row)).or_default().insert(
            (rating.seat_mark, rating.day_mark),
            CountedRating {
                mark: rating.mark,
                low: rating.low,
                gone,
            },
        );
    }
    Ok(rows
        .into_iter()
        .map(|((_, name), ratings)| ReleasedRow { name, ratings })
        .collect())
}

/// Checks that a table may be released.
///
/// # Errors
/// Returns [`DeskError::Invalid`] if the rules forbid it.
pub fn check_share_table(table: &ShareTable) -> Result<(), DeskError> {
    match table.release {
        ShareRelease::Allowed { .. } => Ok(()),
        ShareRelease::TooFewChanged { .. } => {
            Err(DeskError::invalid(Field::ShareTable, Rule::TooFewChanged))
        }
        ShareRelease::Nothing => Err(DeskError::invalid(Field::ShareTable, Rule::NothingToShow)),
    }
}

/// Records the release of a table.
///
/// # Errors
/// Returns [`DeskError::Invalid`] if the rules forbid it, or another table was released since it was
/// made.
pub fn release_share_table(
    desk: &DeskStore,
    class: &OpenClass,
    made: &MadeShareTable,
) -> Result<(), DeskError> {
    check_share_table(&made.table)?;
    let id = class.row.id.as_str();
    let ratings: Vec<ReleasedRating> = made
        .released
        .iter()
        .flat_map(|row| {
            row.ratings
                .iter()
                .map(|((seat, day), rating)| ReleasedRating {
                    row: row.name.clone(),
                    seat_mark: seat.clone(),
                    day_mark: day.clone(),
                    mark: rating.mark.clone(),
                    low: rating.low,
                })
        })
        .collect();
    desk.transaction(|| {
        let before = desk.release_count(id)?;
        if !matches!(made.table.release, ShareRelease::Allowed { earlier, .. } if earlier == before)
        {
            return Err(DeskError::invalid(Field::ShareTable, Rule::TooFewChanged));
        }
        desk.add_release(id, made.table.date, &ratings)?;
        Ok(())
    })
}

/// A row before it is decided what it shows.
struct Draft {
    row: ShareRow,
    counts: RowCounts,
    released: ReleasedRow,
}

/// A table, what its shown rows count, and how many rows changed too little.
struct Made {
    table: ShareTable,
    released: Vec<ReleasedRow>,
    unchanged: usize,
}

/// The table in the finest detail that the rules allow.
fn set(strands: &[String], concepts: &[Rated], log: &[ReleasedRow]) -> Made {
    // A row without a rating does not influence the level of detail.
    let counts: Vec<RowCounts> = concepts
        .iter()
        .map(|rated| rated.counts)
        .filter(|counts| counts.reporters > 0)
        .collect();
    let limits = CompletionLimits::default();
    let step = choose_step(&counts, &limits);
    let mut drafts = drafts(strands, concepts, step, &counts);
    let least = SMALLEST_GROUP as usize;
    let mut log = log.to_vec();
    let (mut released, mut unchanged) = (Vec::new(), 0);
    for draft in &mut drafts {
        let shows = match step {
            Step::ConceptCounts => draft.counts.reporters >= SMALLEST_GROUP,
            _ => band(draft.counts.low, draft.counts.reporters).is_some(),
        };
        if shows && check_row(&log, &draft.released, least).is_ok() {
            log.push(draft.released.clone());
            released.push(draft.released.clone());
        } else {
            unchanged += usize::from(shows);
            // Withheld, and no part of the sums.
            draft.counts.reporters = 0;
        }
    }
    let table = match step {
        Step::ConceptCounts => counted_table(drafts, &limits),
        _ => banded_table(drafts, step),
    };
    Made {
        table,
        released,
        unchanged,
    }
}

/// The rows of a level of detail.
fn drafts(strands: &[String], concepts: &[Rated], step: Step, counts: &[RowCounts]) -> Vec<Draft> {
    let merged = |counts: RowCounts, strand: Option<usize>| Draft {
        row: ShareRow {
            strand: strand.and_then(|at| strands.get(at).cloned()),
            concept: None,
            shown: ShareShown::Withheld,
        },
        counts,
        released: ReleasedRow {
            name: strand
                .and_then(|at| strands.get(at).cloned())
                .unwrap_or_default(),
            ratings: concepts
                .iter()
                .filter(|rated| strand.is_none_or(|at| at == rated.counts.strand))
                .flat_map(|rated| rated.ratings.clone())
                .collect(),
        },
    };
    match step {
        Step::ConceptCounts | Step::ConceptBands => concepts
            .iter()
            .map(|rated| Draft {
                row: ShareRow {
                    strand: strands.get(rated.counts.strand).cloned(),
                    concept: Some(rated.concept.clone()),
                    shown: ShareShown::Withheld,
                },
                counts: rated.counts,
                released: ReleasedRow {
                    name: rated.concept.id.clone(),
                    ratings: rated.ratings.clone(),
                },
            })
            .collect(),
        Step::StrandBands => strand_rows(counts)
            .into_iter()
            .map(|counts| merged(counts, Some(counts.strand)))
            .collect(),
        Step::ClassOnly => {
            let one: Vec<RowCounts> = counts
                .iter()
                .map(|c| RowCounts { strand: 0, ..*c })
                .collect();
            strand_rows(&one)
                .into_iter()
                .map(|counts| merged(counts, None))
                .collect()
        }
    }
}

/// The table of bands.
fn banded_table(drafts: Vec<Draft>, step: Step) -> ShareTable {
    // The counts that are possible for a reader who knows how many rated.
    let possible: Vec<u64> = drafts
        .iter()
        .filter_map(|draft| band(draft.counts.low, draft.counts.reporters))
        .map(|band| u64::from(band.to_count - band.from_count) + 1)
        .collect();
    let least_possible = u64::from(FEWEST_COUNTS);
    let fewest_possible = possible.iter().copied().min();
    ShareTable {
        step: match step {
            Step::StrandBands => ShareStep::StrandBands,
            Step::ClassOnly => ShareStep::ClassOnly,
            Step::ConceptCounts | Step::ConceptBands => ShareStep::ConceptBands,
        },
        totals: None,
        audit: ShareAudit {
            withheld: drafts.len() - possible.len(),
            further: 0,
            least_possible,
            fewest_possible,
            bounds: Vec::new(),
            safe: fewest_possible.is_none_or(|fewest| fewest >= least_possible),
        },
        ..empty(
            drafts
                .into_iter()
                .map(|draft| ShareRow {
                    shown: banded(draft.counts),
                    ..draft.row
                })
                .collect(),
        )
    }
}

fn empty(rows: Vec<ShareRow>) -> ShareTable {
    ShareTable {
        class_title: String::new(),
        date: NaiveDate::default(),
        step: ShareStep::ConceptBands,
        smallest_group: SMALLEST_GROUP,
        rows,
        totals: None,
        audit: ShareAudit {
            withheld: 0,
            further: 0,
            least_possible: 0,
            fewest_possible: None,
            bounds: Vec::new(),
            safe: false,
        },
        release: ShareRelease::Nothing,
    }
}

fn banded(counts: RowCounts) -> ShareShown {
    match band(counts.low, counts.reporters) {
        Some(band) => ShareShown::Band {
            from_percent: band.from_percent,
            to_percent: band.to_percent,
            to_included: band.to_included,
            fewest_reporters: band.fewest_reporters,
            most_reporters: band.most_reporters,
        },
        None => ShareShown::Withheld,
    }
}

/// A cell of a table by row and column.
fn cell_of<T: Copy>(table: &[Vec<T>], row: usize, column: usize) -> Option<T> {
    table.get(row)?.get(column).copied()
}

/// The table of counts, without small cells and without cells that would reveal them.
fn counted_table(drafts: Vec<Draft>, limits: &CompletionLimits) -> ShareTable {
    let table: Vec<Vec<u32>> = drafts
        .iter()
        .filter(|draft| draft.counts.reporters > 0)
        .map(|draft| {
            let RowCounts { low, reporters, .. } = draft.counts;
            vec![low, reporters - low]
        })
        .collect();
    let width = protection_width(SMALLEST_GROUP);
    let done = complete(&table, SMALLEST_GROUP, width, limits);
    let small = primary_cells(&table, SMALLEST_GROUP);
    let found = audit(&table, &done.withheld);
    // The other rows are withheld and are not part of the sums.
    let mut place_in_rows = Vec::new();
    let rows: Vec<ShareRow> = drafts
        .into_iter()
        .enumerate()
        .map(|(place, draft)| {
            let shown = if draft.counts.reporters == 0 {
                ShareShown::Withheld
            } else {
                let at = place_in_rows.len();
                place_in_rows.push(place);
                let cell = |column: usize| {
                    let withheld = cell_of(&done.withheld, at, column)?;
                    cell_of(&table, at, column).filter(|_| !withheld)
                };
                ShareShown::Counts {
                    low: cell(0),
                    high: cell(1),
                    reporters: draft.counts.reporters,
                }
            };
            ShareRow { shown, ..draft.row }
        })
        .collect();
    // A range of `width` has one more count than its width.
    let least_possible = u64::from(width) + 1;
    let fewest_possible = found
        .iter()
        .filter(|bounds| cell_of(&small, bounds.row, bounds.column) == Some(true))
        .map(|bounds| bounds.width() + 1)
        .min();
    let sum = |column: usize| table.iter().filter_map(|row| row.get(column)).sum();
    ShareTable {
        step: ShareStep::ConceptCounts,
        totals: Some([sum(0), sum(1)]),
        audit: ShareAudit {
            withheld: found.len(),
            further: done.extra,
            least_possible,
            fewest_possible,
            bounds: found
                .iter()
                .filter_map(|bounds| {
                    Some(ShareBounds {
                        row: *place_in_rows.get(bounds.row)?,
                        column: bounds.column,
                        least: bounds.least,
                        most: bounds.most,
                    })
                })
                .collect(),
            safe: done.safe && fewest_possible.is_none_or(|fewest| fewest >= least_possible),
        },
        ..empty(rows)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn concept(place: usize) -> ConceptName {
        ConceptName {
            id: format!("c{place}"),
            strand: "number".into(),
            title: format!("Concept {place}"),
            i_can: String::new(),
            shown_in: None,
            has_exercises: false,
        }
    }

    fn table(rows: &[(usize, u32, u32)]) -> ShareTable {
        let concepts: Vec<Rated> = rows
            .iter()
            .enumerate()
            .map(|(place, &(strand, reporters, low))| {
                let ratings = (0..reporters)
                    .map(|seat| {
                        let rating = CountedRating {
                            mark: "1".into(),
                            low: seat < low,
                            gone: false,
                        };
                        ((format!("{seat}"), format!("c{place}")), rating)
                    })
                    .collect();
                Rated {
                    concept: concept(place),
                    counts: counts_of(strand, &ratings),
                    ratings,
                }
            })
            .collect();
        set(&["number".to_owned(), "shape".to_owned()], &concepts, &[]).table
    }

    #[test]
    fn a_large_class_gives_counts_whose_small_cells_stay_unknown() {
        let mut rows = vec![(0, 60, 30); 9];
        rows.push((0, 60, 3));
        let made = table(&rows);
        assert_eq!(made.step, ShareStep::ConceptCounts);
        assert!(made.audit.safe);
        assert!(made.audit.further > 0, "the total would give the 3 away");
        assert!(made.audit.bounds.iter().any(|b| b.row == 9));
        for bounds in &made.audit.bounds {
            assert!(bounds.most > bounds.least);
        }
        let shown = made.rows[9].shown;
        assert!(matches!(
            shown,
            ShareShown::Counts {
                low: None,
                high: None,
                reporters: 60
            }
        ));
    }

    #[test]
    fn a_class_of_usual_size_gives_bands_and_withholds_what_few_rated() {
        let made = table(&[(0, 24, 12), (0, 24, 1), (0, 22, 20), (1, 23, 9), (1, 4, 2)]);
        assert_eq!(made.step, ShareStep::ConceptBands);
        assert_eq!(made.rows[4].shown, ShareShown::Withheld);
        assert_eq!(made.audit.withheld, 1);
        assert!(made.audit.safe && made.audit.fewest_possible >= Some(3));
        assert_eq!(
            made.rows[1].shown,
            ShareShown::Band {
                from_percent: 0,
                to_percent: 20,
                to_included: true,
                fewest_reporters: 16,
                most_reporters: Some(30)
            }
        );
    }

    #[test]
    fn a_handful_of_students_gives_nothing() {
        let made = table(&[(0, 6, 3), (1, 5, 0)]);
        assert_eq!(made.step, ShareStep::ClassOnly);
        assert!(
            made.rows
                .iter()
                .all(|row| row.shown == ShareShown::Withheld)
        );
        let made = table(&[]);
        assert!(made.rows.is_empty() && made.audit.fewest_possible.is_none());
    }
}
