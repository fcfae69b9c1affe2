//! One order as a row, for a spreadsheet; and back, whole, by its link.

use crate::json::order::written_date;
use hangtrue_core::check::Report;
use hangtrue_core::order::Order;
use hangtrue_core::{Dimension, Unit};

/// The columns of an order, in their order.
///
/// `width`, `height`, `header` and `bow` are what the order says, in the row's `unit`;
/// `prepared` is `yes` where they are of the frame as it will be. `findings` are the
/// codes of the findings, worst first, with spaces between. `link` is the whole order:
/// where it is filled, reading takes the order from it and nothing from the other columns
/// but `id`; a row whose numbers are not those of the link is refused.
pub const ORDER_COLUMNS: [&str; 14] = [
    "id", "vehicle", "contact", "note", "date", "unit", "width", "height", "header", "bow",
    "prepared", "verdict", "findings", "link",
];

/// The row of `order`, of which `report` is the check; `link` may be empty.
#[must_use]
pub fn order(id: &str, order: &Order, report: &Report, link: &str) -> [String; 14] {
    let number = |dimension| {
        let ordered = report.numbers.ordered(dimension);
        ordered.map(|length| length.text(order.survey.unit)).unwrap_or_default()
    };
    let [width, height, header, bow] = Dimension::ALL.map(number);
    let mut found: Vec<&str> = Vec::new();
    for finding in &report.findings {
        if !found.contains(&finding.rule) {
            found.push(finding.rule);
        }
    }
    let built = order.survey.prepared || report.preparation.needed();
    let unit: Unit = order.survey.unit;
    [
        id.to_owned(),
        order.vehicle.clone(),
        order.contact.clone(),
        order.note.clone(),
        order.date.map(written_date).unwrap_or_default(),
        unit.key().to_owned(),
        width,
        height,
        header,
        bow,
        if built { "yes" } else { "no" }.to_owned(),
        report.verdict.key().to_owned(),
        found.join(" "),
        link.to_owned(),
    ]
}

#[cfg(test)]
mod tests {
    use super::super::{Fault, Sheet, line};
    use super::*;
    use hangtrue_core::profile::{End, Limited, Profile, Ruling};
    use hangtrue_core::say::Because;
    use hangtrue_core::{Length, Spot, check};

    fn sample() -> Order {
        let mut order = Order {
            vehicle: "=2+3".to_owned(),
            note: "Dock side,\nbent.".to_owned(),
            ..Order::default()
        };
        for (spot, text) in [
            (Spot::WidthLow, "92 3/16"),
            (Spot::HeightCenter, "101 1/2"),
            (Spot::HeaderLeft, "6"),
            (Spot::BowFirst, "1 1/4"),
        ] {
            order.survey.add(spot, text);
        }
        order
    }

    fn back(text: &str) -> Order {
        let sheet = Sheet::open(text).unwrap();
        let mut mark = sheet.start;
        let row = sheet.next(text, &mut mark).unwrap();
        assert_eq!(row.id, "A-17");
        row.order.unwrap()
    }

    #[test]
    fn the_whole_order_comes_back_by_its_link_and_the_numbers_without_it() {
        let written = sample();
        let report = check(&written.survey, &Profile::default());
        assert!(report.preparation.needed());
        let link = crate::url("https://dealer.example/", &written).unwrap();
        let table = |link: &str| {
            [line(&ORDER_COLUMNS), line(&order("A-17", &written, &report, link))].concat()
        };
        assert_eq!(back(&table(&link)), written);
        let bare = back(&table(""));
        assert_eq!((&bare.vehicle, &bare.note), (&written.vehicle, &written.note));
        let again = check(&bare.survey, &Profile::default());
        for dimension in Dimension::ALL {
            assert_eq!(again.numbers.ordered(dimension), report.numbers.ordered(dimension));
        }
        assert!(!again.preparation.needed(), "the numbers are of the built frame");
        assert!(table("").contains("\"'=2+3\""), "no formula leaves");
    }

    /// Whoever corrects a cell of an exported table means it: neither number is taken.
    #[test]
    fn a_cell_that_differs_from_the_link_beside_it_refuses_the_row() {
        let written = sample();
        let report = check(&written.survey, &Profile::default());
        let link = crate::url("https://dealer.example/", &written).unwrap();
        let exported = order("A-17", &written, &report, &link);
        let read = |cells: &[String; 14], profile: &Profile| {
            let text = [line(&ORDER_COLUMNS), line(cells)].concat();
            let sheet = Sheet { profile: profile.clone(), ..Sheet::open(&text).unwrap() };
            let mut mark = sheet.start;
            sheet.next(&text, &mut mark).unwrap().order
        };
        let with = |name: &str, text: &str| {
            let mut cells = exported.clone();
            let at = ORDER_COLUMNS.iter().position(|column| *column == name).unwrap();
            text.clone_into(&mut cells[at]);
            cells
        };
        let plain = Profile::default();
        for (name, wrong) in [
            ("width", "96 in"),
            ("width", "92 1/8"),
            ("width", "see note"),
            ("height", "96"),
            ("header", "6"),
            ("bow", "2"),
        ] {
            let refused = read(&with(name, wrong), &plain).unwrap_err();
            assert_eq!(refused.code(), "differs-from-link", "{name} {wrong}");
            let Fault::Differs { column, found, ordered, .. } = refused else { unreachable!() };
            assert_eq!((column.as_str(), found.as_str()), (name, wrong));
            assert!(ordered.is_some());
        }
        // The same number in other words, none, and words that are no number's.
        for (name, same) in [
            ("width", "92-3/16"),
            ("width", "92.1875 in"),
            ("width", ""),
            ("bow", "1,25"),
            ("note", "96"),
            ("unit", "in"),
        ] {
            assert_eq!(read(&with(name, same), &plain).as_ref(), Ok(&written), "{name} {same}");
        }
        let mut bare = with("unit", "unit 7");
        for name in ["width", "height", "header", "bow"] {
            let at = ORDER_COLUMNS.iter().position(|column| *column == name).unwrap();
            bare[at].clear();
        }
        assert_eq!(read(&bare, &plain).as_ref(), Ok(&written), "nothing to be held against");

        // A dealer's table is held against the dealer's numbers.
        let deeper = Ruling {
            what: Limited::Header,
            end: End::Least,
            bound: Length::from_inches(11),
            because: Because::Door(Default::default()),
            stop: false,
        };
        let dealer = Profile { rulings: vec![deeper], ..Profile::default() };
        let by_dealer = check(&written.survey, &dealer);
        assert_ne!(by_dealer.numbers, report.numbers);
        let exported = order("A-17", &written, &by_dealer, &link);
        assert_eq!(read(&exported, &dealer).as_ref(), Ok(&written));
        assert!(read(&exported, &plain).is_err());
    }

    /// Whether the frame of the numbers is the frame as it stands, and each rule once.
    #[test]
    fn a_row_says_what_the_numbers_are_of() {
        let [prepared, findings] = ["prepared", "findings"]
            .map(|name| ORDER_COLUMNS.iter().position(|column| *column == name).unwrap());
        let cell = |written: &Order, at: usize| {
            let report = check(&written.survey, &Profile::default());
            order("", written, &report, "")[at].clone()
        };
        let to_be_built = sample();
        assert_eq!(cell(&to_be_built, prepared), "yes");
        let mut fits = sample();
        fits.survey.set(Spot::HeaderLeft, 0, "12");
        assert_eq!(cell(&fits, prepared), "no");
        fits.survey.prepared = true;
        assert_eq!(cell(&fits, prepared), "yes");

        let mut unreadable = sample();
        unreadable.survey.add(Spot::WidthHigh, "wide");
        unreadable.survey.add(Spot::HeightLeft, "tall");
        let found = cell(&unreadable, findings);
        let mut rules: Vec<&str> = found.split(' ').collect();
        assert!(rules.contains(&"unreadable"), "{found}");
        rules.sort_unstable();
        rules.dedup();
        assert_eq!(rules.len(), found.split(' ').count(), "{found}");
    }
}
