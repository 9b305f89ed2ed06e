//! XLSX: one sheet a grid. Text cells are stored as text, so no guard is needed.

use super::{Grid, GridCell};
use crate::error::ReportError;
use rust_xlsxwriter::{DocProperties, ExcelDateTime, Format, Workbook, XlsxError};

/// Width of a column at most, in characters.
const MOST_WIDTH: usize = 44;

impl From<XlsxError> for ReportError {
    fn from(error: XlsxError) -> Self {
        Self::Writer(error.to_string())
    }
}

/// The grids as sheets of a workbook.
pub fn to_xlsx(grids: &[Grid]) -> Result<Vec<u8>, ReportError> {
    let mut book = Workbook::new();
    // Equal content gives equal bytes, so the file has a fixed time and no author.
    let epoch = ExcelDateTime::from_ymd(2000, 1, 1)?;
    book.set_properties(&DocProperties::new().set_creation_datetime(&epoch));
    let bold = Format::new().set_bold();
    let percent = Format::new().set_num_format("0.0%");
    for grid in grids {
        let sheet = book.add_worksheet();
        sheet.set_name(&grid.title)?;
        sheet.set_freeze_panes(1, 2)?;
        for (column, name) in (0_u16..).zip(&grid.head) {
            sheet.write_string_with_format(0, column, name, &bold)?;
            let widest = grid
                .rows
                .iter()
                .filter_map(|row| match row.get(usize::from(column)) {
                    Some(GridCell::Text(text)) => Some(text.chars().count()),
                    _ => None,
                })
                .chain([name.chars().count()])
                .max()
                .unwrap_or(8)
                .min(MOST_WIDTH);
            let width = u32::try_from(widest + 2).map_or(10.0, f64::from);
            sheet.set_column_width(column, width)?;
        }
        for (line, row) in (1_u32..).zip(&grid.rows) {
            for (column, cell) in (0_u16..).zip(row) {
                match cell {
                    GridCell::Text(text) => {
                        sheet.write_string(line, column, text)?;
                    }
                    GridCell::Number(number) => {
                        sheet.write_number(line, column, *number)?;
                    }
                    GridCell::Share(share) => {
                        sheet.write_number_with_format(line, column, *share, &percent)?;
                    }
                    GridCell::Empty => {}
                }
            }
        }
    }
    Ok(book.save_to_buffer()?)
}
