//! The generators, by strand.

mod addition_subtraction;
mod data;
mod decimals;
mod expressions;
mod fractions;
mod geometry;
mod measurement;
mod multiplication;
mod number_system;
mod place_value;
mod ratio;
mod ratio_pairs;
mod statistics;

use super::make::Generator;

/// Every generator.
pub fn all() -> impl Iterator<Item = &'static Generator> {
    [
        place_value::GENERATORS,
        addition_subtraction::GENERATORS,
        multiplication::facts::GENERATORS,
        multiplication::stories::GENERATORS,
        multiplication::numbers::GENERATORS,
        multiplication::written::GENERATORS,
        fractions::grade_3::GENERATORS,
        fractions::grade_3_line::GENERATORS,
        fractions::grade_4::GENERATORS,
        fractions::grade_4_why::GENERATORS,
        fractions::grade_4_mixed::GENERATORS,
        fractions::grade_4_stories::GENERATORS,
        fractions::grade_5::GENERATORS,
        fractions::grade_5_multiply::GENERATORS,
        fractions::grade_5_divide::GENERATORS,
        decimals::places::GENERATORS,
        decimals::order::GENERATORS,
        decimals::operations::GENERATORS,
        measurement::time::GENERATORS,
        measurement::area::GENERATORS,
        measurement::perimeter::GENERATORS,
        measurement::units::GENERATORS,
        measurement::volume::GENERATORS,
        geometry::shapes::GENERATORS,
        geometry::families::GENERATORS,
        geometry::angles::GENERATORS,
        geometry::grids::GENERATORS,
        geometry::solids::GENERATORS,
        data::graphs::GENERATORS,
        data::line_plots::GENERATORS,
        ratio::GENERATORS,
        number_system::operations::GENERATORS,
        number_system::signed::GENERATORS,
        number_system::order::GENERATORS,
        number_system::contexts::GENERATORS,
        expressions::numbers::GENERATORS,
        expressions::rewrite::write::GENERATORS,
        expressions::rewrite::equal::GENERATORS,
        expressions::equations::GENERATORS,
        statistics::questions::GENERATORS,
        statistics::measures::GENERATORS,
    ]
    .into_iter()
    .flatten()
}
