use super::completion::is_safe;
use super::*;
use proptest::prelude::*;

fn vectors() -> serde_json::Value {
    serde_json::from_str(include_str!(
        "../../../../shared/vectors/insight/disclosure-cases.json"
    ))
    .unwrap()
}

fn attack(name: &str) -> serde_json::Value {
    vectors()["attacks_to_test"]
        .as_array()
        .unwrap()
        .iter()
        .find(|a| a["name"] == name)
        .unwrap()
        .clone()
}

/// A row with a shown total beside a withheld row, so that column totals reveal nothing.
fn row_audit(row: &[u32], holes: &[usize]) -> Vec<CellBounds> {
    let table = vec![row.to_vec(), vec![500; row.len()]];
    let mut withheld = vec![vec![false; row.len()], vec![true; row.len()]];
    for hole in holes {
        withheld[0][*hole] = true;
    }
    audit(&table, &withheld)
        .into_iter()
        .filter(|b| b.row == 0)
        .collect()
}

/// 12 + 8 + hole = 23 reveals the hole.
#[test]
fn attack_single_hole() {
    let recovered = attack("single hole")["recovered"].as_u64().unwrap();
    let bounds = row_audit(&[12, 8, 3], &[2]);
    assert_eq!((bounds[0].least, bounds[0].most), (recovered, recovered));
    assert!(
        row_audit(&[12, 8, 3], &[1, 2])
            .iter()
            .all(|b| b.width() >= 5)
    );
}

/// Holes with the sum 0 are all 0.
#[test]
fn attack_zero_holes() {
    assert_eq!(attack("zero holes")["recovered"], serde_json::json!([0, 0]));
    for bounds in row_audit(&[0, 0, 20], &[0, 1]) {
        assert_eq!((bounds.least, bounds.most), (0, 0));
    }
    // Completion withholds more until they are protected.
    let table = vec![vec![0, 0, 20], vec![30, 31, 32], vec![40, 41, 42]];
    let done = complete(&table, 10, 5, &CompletionLimits::default());
    assert!(done.safe && is_safe(&table, &done.withheld, 10, 5));
}

/// 0 of 8 would reveal everyone: too few reporters, and never an exact end.
#[test]
fn attack_all_alike() {
    let group = &attack("all alike")["group"];
    assert_eq!(group["n"], 8);
    assert_eq!(band(0, 8), None);
    for reporters in 10..200 {
        for low in [0, reporters] {
            let band = band(low, reporters).unwrap();
            assert!(band.to_count - band.from_count >= 2, "{low}/{reporters}");
        }
    }
}

/// 8.3% of 12 can only be 1; the band is "below half".
#[test]
fn attack_percent_gives_count() {
    let case = attack("percent gives count");
    assert_eq!(case["recovered"], 1);
    let band = band(1, 12).unwrap();
    assert_eq!((band.from_count, band.to_count), (0, 5));
    assert_eq!(
        (band.from_percent, band.to_percent, band.to_included),
        (0, 50, false)
    );
}

/// The labels of EDFacts public files (from memory) for the group sizes that
/// both ladders share.
#[test]
fn bands_agree_with_the_federal_ranges() {
    let file = vectors();
    let cases = file["end_coding_by_size_EDFacts_from_memory"]["cases"]
        .as_array()
        .unwrap();
    let mut checked = 0;
    for case in cases {
        let n = u32::try_from(case["n"].as_u64().unwrap()).unwrap();
        let x = u32::try_from(case["x"].as_u64().unwrap()).unwrap();
        if !(10..=120).contains(&n) {
            continue;
        }
        let band = band(x, n).unwrap();
        let label = match (band.number, band.to_percent) {
            (0, 50) => "<50%".to_owned(),
            (1, 100) if n <= 15 => ">=50%".to_owned(),
            (0, to) => format!("<={to}%"),
            (_, 100) => format!(">={}%", band.from_percent),
            (1, to) => format!("{}-{}%", band.from_percent + 1, to - 1),
            (_, to) => format!("{}-{}%", band.from_percent, to - 1),
        };
        assert_eq!(label, case["label"].as_str().unwrap(), "{x}/{n}");
        checked += 1;
    }
    assert_eq!(checked, 9);
}

#[test]
fn nothing_to_protect_withholds_nothing() {
    for table in [vec![], vec![vec![]], vec![vec![20, 30], vec![40, 50]]] {
        let done = complete(&table, 10, 5, &CompletionLimits::default());
        assert!(done.safe && done.proved_fewest);
        assert_eq!(done.extra, 0);
    }
}

#[test]
fn a_table_that_cannot_be_protected_says_so() {
    // One row: its column totals are its cells.
    let done = complete(&[vec![3, 40, 50]], 10, 5, &CompletionLimits::default());
    assert!(!done.safe);
}

#[test]
fn the_ladder_takes_the_finest_step_that_shows_enough() {
    let row = |strand, reporters, low| RowCounts {
        strand,
        reporters,
        low,
    };
    let limits = CompletionLimits::default();
    let big: Vec<RowCounts> = (0..5).map(|s| row(s, 80, 30)).collect();
    assert_eq!(choose_step(&big, &limits), Step::ConceptCounts);
    let class: Vec<RowCounts> = (0..5).map(|s| row(s, 25, 4)).collect();
    assert_eq!(choose_step(&class, &limits), Step::ConceptBands);
    let thin: Vec<RowCounts> = (0..6)
        .map(|c| row(c / 3, if c % 3 == 0 { 24 } else { 5 }, 3))
        .collect();
    assert_eq!(choose_step(&thin, &limits), Step::StrandBands);
    assert_eq!(choose_step(&[row(0, 6, 3)], &limits), Step::ClassOnly);
    assert_eq!(choose_step(&[], &limits), Step::ClassOnly);
}

/// Least and most by trying every table with the same shown cells and totals.
fn bounds_by_trying(table: &Table, withheld: &Mask) -> Vec<CellBounds> {
    let cells: Vec<(usize, usize)> = (0..table.len())
        .flat_map(|i| (0..table[i].len()).map(move |j| (i, j)))
        .filter(|(i, j)| withheld[*i][*j])
        .collect();
    let rows: Vec<u32> = (0..table.len())
        .map(|i| {
            cells
                .iter()
                .filter(|c| c.0 == i)
                .map(|c| table[c.0][c.1])
                .sum()
        })
        .collect();
    let columns: Vec<u32> = (0..table[0].len())
        .map(|j| {
            cells
                .iter()
                .filter(|c| c.1 == j)
                .map(|c| table[c.0][c.1])
                .sum()
        })
        .collect();
    let mut bounds: Vec<CellBounds> = cells
        .iter()
        .map(|&(row, column)| CellBounds {
            row,
            column,
            least: u64::MAX,
            most: 0,
        })
        .collect();
    fn fill(
        cells: &[(usize, usize)],
        next: usize,
        rows: &mut Vec<u32>,
        columns: &mut Vec<u32>,
        values: &mut Vec<u32>,
        bounds: &mut [CellBounds],
    ) {
        let Some(&(i, j)) = cells.get(next) else {
            if rows.iter().chain(columns.iter()).all(|left| *left == 0) {
                for (bound, value) in bounds.iter_mut().zip(values.iter()) {
                    bound.least = bound.least.min(u64::from(*value));
                    bound.most = bound.most.max(u64::from(*value));
                }
            }
            return;
        };
        for value in 0..=rows[i].min(columns[j]) {
            rows[i] -= value;
            columns[j] -= value;
            values.push(value);
            fill(cells, next + 1, rows, columns, values, bounds);
            values.pop();
            rows[i] += value;
            columns[j] += value;
        }
    }
    fill(
        &cells,
        0,
        &mut rows.clone(),
        &mut columns.clone(),
        &mut Vec::new(),
        &mut bounds,
    );
    bounds
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(150))]

    #[test]
    fn the_audit_equals_trying_every_table(
        table in prop::collection::vec(prop::collection::vec(0u32..5, 3), 2..4),
        marks in prop::collection::vec(prop::collection::vec(any::<bool>(), 3), 3),
    ) {
        let withheld: Mask = marks.into_iter().take(table.len()).collect();
        prop_assert_eq!(audit(&table, &withheld), bounds_by_trying(&table, &withheld));
    }

    #[test]
    fn no_small_cell_is_narrower_than_its_width_afterwards(
        table in prop::collection::vec(prop::collection::vec(0u32..60, 4), 2..7),
    ) {
        for smallest in [5, 10] {
            let width = protection_width(smallest);
            let done = complete(&table, smallest, width, &CompletionLimits::default());
            prop_assert_eq!(done.safe, is_safe(&table, &done.withheld, smallest, width));
            for bounds in audit(&table, &done.withheld) {
                let count = u64::from(table[bounds.row][bounds.column]);
                prop_assert!(bounds.least <= count && count <= bounds.most);
            }
            for (row, marks) in table.iter().zip(&done.withheld) {
                for (count, withheld) in row.iter().zip(marks) {
                    prop_assert!(*withheld || *count >= smallest);
                }
            }
        }
    }

    #[test]
    fn fewest_is_fewest(
        table in prop::collection::vec(prop::collection::vec(prop_oneof![0u32..6, 6u32..40], 3), 3),
    ) {
        let done = complete(&table, 5, 3, &CompletionLimits::default());
        prop_assume!(done.safe);
        prop_assert!(done.proved_fewest);
        // Every smaller set of further cells leaves a cell narrow.
        let primary = primary_cells(&table, 5);
        let shown: Vec<(usize, usize)> = (0..9).map(|n| (n / 3, n % 3)).filter(|(i, j)| !primary[*i][*j]).collect();
        for set in 0u32..1 << shown.len() {
            if (set.count_ones() as usize) < done.extra {
                let mut mask = primary.clone();
                for (bit, (i, j)) in shown.iter().enumerate() {
                    mask[*i][*j] |= set & (1 << bit) != 0;
                }
                prop_assert!(!is_safe(&table, &mask, 5, 3));
            }
        }
    }
}
