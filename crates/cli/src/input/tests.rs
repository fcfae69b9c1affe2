//! Whatever comes in is answered, and an order comes back as it was sent.

use hangtrue_core::order::Order;
use hangtrue_core::profile::Profile;
use hangtrue_core::{Spot, Survey, Unit};
use proptest::prelude::*;

use super::*;

fn items(text: &str, format: Format) -> Vec<Item> {
    let how = Tables { format, ..Tables::default() };
    let mut items = Vec::new();
    // A table may have no first row; nothing else is refused as a whole.
    match Input::of_text("-", text.to_owned(), &how) {
        Ok(mut input) => input
            .each(&mut |item| {
                items.push(item);
                Ok(())
            })
            .unwrap(),
        Err(error) => assert!(matches!(format, Format::Csv | Format::Auto), "{error:#}"),
    }
    items
}

/// Texts such as are typed, and some that are no reading.
fn typed() -> impl Strategy<Value = String> {
    prop_oneof!["[1-9][0-9]{0,3}( [1-7]/(2|4|8|16))?( ?(in|mm|\"))?", "[0-9a-z ,./\"'½¼⅛é-]{1,12}",]
}

prop_compose! {
    fn orders()(
        metric in any::<bool>(),
        prepared in any::<bool>(),
        old_door_in in any::<Option<bool>>(),
        readings in prop::collection::vec((0..Spot::ALL.len(), typed()), 1..20),
        vehicle in "\\PC{0,20}",
        note in "[ -~\n]{0,60}",
    ) -> Order {
        let mut survey = Survey::new(if metric { Unit::Millimetre } else { Unit::Inch });
        survey.prepared = prepared;
        for (spot, text) in readings {
            survey.add(Spot::ALL[spot], &text);
        }
        Order { survey, old_door_in, vehicle, note, ..Order::default() }
    }
}

proptest! {
    #[test]
    fn an_order_comes_back_by_link_and_by_file(order in orders()) {
        let link = hangtrue_link::url("https://dealer.example/door/", &order).unwrap();
        let message = format!("W 92 H 101 header 9 bow 1 in {link}\n");
        let named = several(&message, &Tables::default(), &Profile::default()).unwrap();
        prop_assert_eq!(&named[0].content.as_ref().unwrap().order, &order);
        let listed = items(&message.repeat(3), Format::Auto);
        prop_assert_eq!(listed.len(), 3);
        prop_assert_eq!(&listed[2].content.as_ref().unwrap().order, &order);
    }

    #[test]
    fn every_line_is_answered_and_none_makes_it_panic(
        text in "([a-z{}\\[\\]\":,;#%/0-9\t ]{0,30}\r?\n){0,40}", cut in 0..4_usize,
    ) {
        let text = text.get(..text.len().saturating_sub(cut)).unwrap_or_default();
        let lines = text.lines().filter(|line| !line.trim().is_empty()).count();
        for format in [Format::JsonLines, Format::Links] {
            prop_assert_eq!(items(text, format).len(), lines);
        }
        prop_assert_eq!(items(text, Format::Json).len(), 1);
        items(text, Format::Csv);
        items(text, Format::Auto);
    }

    #[test]
    fn bytes_that_are_no_text_are_answered_too(bytes in prop::collection::vec(any::<u8>(), 0..400)) {
        let text = String::from_utf8_lossy(&bytes);
        items(&text, Format::Csv);
        items(&text, Format::Links);
        let _ = several(&text, &Tables::default(), &Profile::default());
    }
}
