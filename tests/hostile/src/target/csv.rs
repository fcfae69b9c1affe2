//! Many orders as a table.

use hangtrue_core::check::Report;
use hangtrue_core::say::Language;
use hangtrue_link::csv::{self, Delimiter, Mark, ORDER_COLUMNS, Row, Sheet};

/// Every record moves on, every row has its line; a record that is written is read back,
/// an order with its link comes back whole.
pub(crate) fn holds(bytes: &[u8]) {
    let text = &super::text(bytes);
    records(text);
    let sheet = match Sheet::open(text) {
        Ok(sheet) => sheet,
        Err(fault) => return said(&fault),
    };
    assert_eq!(sheet.columns.len(), sheet.names.len());
    let (mut mark, mut line) = (sheet.start, 0);
    while let Some(row) = sheet.next(text, &mut mark) {
        assert!(row.line > line, "{text:?}: line {} after {line}", row.line);
        line = row.line;
        comes_back(&row);
    }
    assert_eq!(mark.at, text.len());
}

fn said(fault: &csv::Fault) {
    for language in Language::ALL {
        assert!(csv::Fault::code(fault).len() < 40);
        assert!(!hangtrue_link::say::table(language, fault).is_empty());
    }
}

fn records(text: &str) {
    for delimiter in Delimiter::ALL {
        let mut mark = Mark::start(text);
        loop {
            let before = mark.at;
            let Some(record) = csv::record(text, delimiter, &mut mark) else { break };
            assert!(mark.at > before, "{text:?}: it stands still at {before}");
            assert!(text.is_char_boundary(mark.at));
            let Ok(fields) = record else { continue };
            let line = csv::line(&fields);
            let again = csv::record(&line, Delimiter::Comma, &mut Mark::start(&line));
            assert_eq!(again, Some(Ok(fields)), "{line:?}");
        }
        assert_eq!(mark.at, text.len());
    }
}

fn comes_back(row: &Row) {
    let order = match &row.order {
        Ok(order) => order,
        Err(fault) => return said(fault),
    };
    let Ok(link) = hangtrue_link::url("https://dealer.example/", order) else { return };
    let cells = csv::order(&row.id, order, &Report::default(), &link);
    let table = [csv::line(&ORDER_COLUMNS), csv::line(&cells)].concat();
    let sheet = Sheet::open(&table).expect("what is written is a table");
    let again = sheet.next(&table, &mut sheet.start.clone()).expect("it has the row");
    assert_eq!((&again.id, &again.order), (&row.id, &row.order), "{table}");
}
