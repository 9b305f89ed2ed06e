//! Makes the share-safe table of a class, and logs its releases. Rules and sources:
//! `docs/insight.md`, "Share-safe tables".

use super::views::{
    ShareAudit, ShareBounds, ShareRelease, ShareRow, ShareShown, ShareStep, ShareTable,
};
use crate::board::board;
use crate::class::OpenClass;
use crate::error::{DeskError, Field, Rule};
use chrono::NaiveDate;
use sha2::{Digest, Sha256};
use std::collections::BTreeSet;
use std::fmt::Write as _;
use surefoot_catalogue::Language;
use surefoot_catalogue::rotation::Phase;
use surefoot_insight::disclosure::{
    CompletionLimits, FEWEST_COUNTS, ReleaseError, RowCounts, SMALLEST_GROUP, Step, audit, band,
    check_release, choose_step, complete, primary_cells, protection_width, strand_rows,
};
use surefoot_record::ConceptName;
use surefoot_store::DeskStore;
use surefoot_store::desk::ReleaseRow;

/// The share-safe table of a class: for each concept past its first lesson, how many students last
/// rated Not yet or With help.
pub fn share_table(
    desk: &DeskStore,
    class: &OpenClass,
    language: Language,
    today: NaiveDate,
) -> Result<ShareTable, DeskError> {
    let mut strands: Vec<String> = Vec::new();
    let mut concepts: Vec<(ConceptName, RowCounts)> = Vec::new();
    let board = board(desk, class, language, today)?;
    for id in class.facts.by_strand() {
        let Some(row) = board
            .rows
            .iter()
            .find(|row| row.concept.id == id && row.phase != Phase::Preview)
        else {
            continue;
        };
        let strand = strands
            .iter()
            .position(|strand| *strand == row.concept.strand)
            .unwrap_or_else(|| {
                strands.push(row.concept.strand.clone());
                strands.len() - 1
            });
        concepts.push((
            row.concept.clone(),
            RowCounts {
                strand,
                reporters: row.latest.iter().sum(),
                low: row.latest[0] + row.latest[1],
            },
        ));
    }
    let mut table = set(&strands, &concepts);
    table.class_title = class.row.title.clone();
    table.date = today;
    let nothing = table
        .rows
        .iter()
        .all(|row| row.shown == ShareShown::Withheld);
    table.release = if nothing || !table.audit.safe {
        ShareRelease::Nothing
    } else {
        release_of(desk, class)?
    };
    Ok(table)
}

/// Checks that a table may be released.
///
/// # Errors
/// Returns [`DeskError::Invalid`] if the rules forbid it.
pub fn check_share_table(
    desk: &DeskStore,
    class: &OpenClass,
    table: &ShareTable,
) -> Result<(), DeskError> {
    if table.release == ShareRelease::Nothing {
        return Err(DeskError::invalid(Field::ShareTable, Rule::Nothing));
    }
    match release_of(desk, class)? {
        ShareRelease::Allowed { .. } => Ok(()),
        _ => Err(DeskError::invalid(Field::ShareTable, Rule::NearlySameClass)),
    }
}

/// Records the release of a table.
pub fn release_share_table(
    desk: &DeskStore,
    class: &OpenClass,
    table: &ShareTable,
) -> Result<(), DeskError> {
    check_share_table(desk, class, table)?;
    desk.transaction(|| {
        desk.add_release(
            &class.row.id,
            &ReleaseRow {
                made_on: table.date,
                seat_marks: seat_marks(class),
            },
        )
    })?;
    Ok(())
}

fn release_of(desk: &DeskStore, class: &OpenClass) -> Result<ShareRelease, DeskError> {
    let releases = desk.releases(&class.row.id)?;
    let log: Vec<BTreeSet<String>> = releases.iter().map(|r| r.seat_marks.clone()).collect();
    Ok(
        match check_release(&log, &seat_marks(class), SMALLEST_GROUP as usize) {
            Ok(()) => ShareRelease::Allowed {
                earlier: releases.len(),
            },
            Err(ReleaseError::NearlyTheSameClass {
                release,
                differing,
                least,
            }) => ShareRelease::NearlySameClass {
                made_on: releases
                    .get(release)
                    .map_or(NaiveDate::default(), |release| release.made_on),
                differing,
                least,
            },
        },
    )
}

/// A mark for each seat: 16 hexadecimal digits of a digest of its code. A later student on the same
/// number has another code.
fn seat_marks(class: &OpenClass) -> BTreeSet<String> {
    class
        .seats
        .iter()
        .map(|seat| {
            let digest = Sha256::digest(format!("{}/{}", class.row.id, seat.token));
            digest.iter().take(8).fold(String::new(), |mut mark, byte| {
                let _ = write!(mark, "{byte:02x}");
                mark
            })
        })
        .collect()
}

/// The table in the finest detail that the rules allow.
fn set(strands: &[String], concepts: &[(ConceptName, RowCounts)]) -> ShareTable {
    // A row without a rating does not influence the level of detail.
    let counts: Vec<RowCounts> = concepts
        .iter()
        .map(|(_, counts)| *counts)
        .filter(|counts| counts.reporters > 0)
        .collect();
    let limits = CompletionLimits::default();
    let step = choose_step(&counts, &limits);
    if step == Step::ConceptCounts {
        return counted(strands, concepts, &limits);
    }
    let rows: Vec<(ShareRow, RowCounts)> = match step {
        Step::ConceptCounts | Step::ConceptBands => concepts
            .iter()
            .map(|(concept, counts)| {
                let row = ShareRow {
                    strand: strands.get(counts.strand).cloned(),
                    concept: Some(concept.clone()),
                    shown: banded(*counts),
                };
                (row, *counts)
            })
            .collect(),
        Step::StrandBands => strand_rows(&counts)
            .into_iter()
            .map(|counts| {
                let row = ShareRow {
                    strand: strands.get(counts.strand).cloned(),
                    concept: None,
                    shown: banded(counts),
                };
                (row, counts)
            })
            .collect(),
        Step::ClassOnly => {
            let one: Vec<RowCounts> = counts
                .iter()
                .map(|c| RowCounts { strand: 0, ..*c })
                .collect();
            strand_rows(&one)
                .into_iter()
                .map(|counts| {
                    let row = ShareRow {
                        strand: None,
                        concept: None,
                        shown: banded(counts),
                    };
                    (row, counts)
                })
                .collect()
        }
    };
    // The counts that are possible for a reader who knows how many rated.
    let possible: Vec<u64> = rows
        .iter()
        .filter_map(|(_, counts)| band(counts.low, counts.reporters))
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
            withheld: rows.len() - possible.len(),
            further: 0,
            least_possible,
            fewest_possible,
            bounds: Vec::new(),
            safe: fewest_possible.is_none_or(|fewest| fewest >= least_possible),
        },
        ..empty(rows.into_iter().map(|(row, _)| row).collect())
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
fn counted(
    strands: &[String],
    concepts: &[(ConceptName, RowCounts)],
    limits: &CompletionLimits,
) -> ShareTable {
    let table: Vec<Vec<u32>> = concepts
        .iter()
        .filter(|(_, counts)| counts.reporters > 0)
        .map(|(_, counts)| vec![counts.low, counts.reporters - counts.low])
        .collect();
    let width = protection_width(SMALLEST_GROUP);
    let done = complete(&table, SMALLEST_GROUP, width, limits);
    let small = primary_cells(&table, SMALLEST_GROUP);
    let found = audit(&table, &done.withheld);
    // Rows without a rating are withheld and are not part of the sums.
    let mut place_in_rows = Vec::new();
    let rows: Vec<ShareRow> = concepts
        .iter()
        .enumerate()
        .map(|(place, (concept, counts))| {
            let shown = if counts.reporters == 0 {
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
                    reporters: counts.reporters,
                }
            };
            ShareRow {
                strand: strands.get(counts.strand).cloned(),
                concept: Some(concept.clone()),
                shown,
            }
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
        let concepts: Vec<(ConceptName, RowCounts)> = rows
            .iter()
            .enumerate()
            .map(|(place, &(strand, reporters, low))| {
                let counts = RowCounts {
                    strand,
                    reporters,
                    low,
                };
                (concept(place), counts)
            })
            .collect();
        set(&["number".to_owned(), "shape".to_owned()], &concepts)
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
