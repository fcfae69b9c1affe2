//! Many orders at once: whatever stands in a list, and in what is saved of it.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic, reason = "a test may fail")]

mod listing;

use hangtrue_page::core::say::Language;
use hangtrue_page::desk::many::State;
use hangtrue_page::desk::view;
use hangtrue_page::link::csv::guarded;
use hangtrue_page::link::list::ANSWER_COLUMNS;
use listing::{checked, list, saved};
use proptest::prelude::*;

/// What an attacker or a spreadsheet may have put into a cell.
fn cell() -> impl Strategy<Value = String> {
    "([=+@\\-'\t\r\n]|＝)?[a-zA-Z0-9=+@;,\"'\t\r\n |!()é-]{0,12}"
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn no_text_makes_it_panic_and_it_comes_to_an_end(
        text in "([a-wB-W0-9/ ,;\t\"'{}\\[\\]:#.=-]{0,24}\r?\n?){0,12}", name in 0..4_usize,
    ) {
        let name = ["", "a.csv", "a.jsonl", "a.txt"][name];
        let mut model = checked(name, &text);
        if let Some(list) = &model.many.list {
            prop_assert_eq!(list.state, State::Done);
            prop_assert!(list.found.len() <= text.len());
            prop_assert_eq!(list.counts.all(), list.found.len());
            saved(&mut model, "csv");
            saved(&mut model, "jsonl");
        }
        let _ = view(&model);
    }

    #[test]
    fn the_export_is_read_back_cell_for_cell_and_no_cell_calculates(
        rows in prop::collection::vec((cell(), cell()), 1..6),
    ) {
        let mut writer = csv::Writer::from_writer(Vec::new());
        writer.write_record(["id", "truck", "width", "height", "header", "bow"]).unwrap();
        for (id, truck) in &rows {
            writer.write_record([id, truck, "92 3/16", "101 1/2", "9 1/2", "1 1/4"]).unwrap();
        }
        let text = String::from_utf8(writer.into_inner().unwrap()).unwrap();
        let mut model = checked("a.csv", &text);
        let text = saved(&mut model, "csv");
        let list = list(&model);
        prop_assert_eq!(list.found.len(), rows.len());
        let mut reader = csv::Reader::from_reader(text.as_bytes());
        prop_assert_eq!(reader.headers().unwrap(), ANSWER_COLUMNS.as_slice());
        let records: Vec<csv::StringRecord> = reader.records().map(Result::unwrap).collect();
        prop_assert_eq!(records.len(), rows.len());
        for (record, at) in records.iter().zip(&list.shown) {
            let cells = list.found[*at].answer.cells(Language::English);
            prop_assert_eq!(record.len(), cells.len());
            for (read, cell) in record.iter().zip(&cells) {
                prop_assert_eq!(read, guarded(cell));
                // Neither as the text stands, nor as a spreadsheet may trim it.
                for read in [read, read.trim_start()] {
                    prop_assert!(!read.starts_with(['=', '+', '-', '@', '\t', '\r', '＝']), "{:?}", read);
                }
                prop_assert_eq!(read.strip_prefix('\'').filter(|_| read != cell).unwrap_or(read), cell);
            }
        }
    }
}
