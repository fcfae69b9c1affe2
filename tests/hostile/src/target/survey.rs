//! A survey or an order as a file.

use hangtrue_core::check::Report;
use hangtrue_core::say::Language;
use hangtrue_link::json;
use hangtrue_link::json::order::OrderFile;

/// What is read and written again is read as the same; a refusal can be said, shortly, and
/// hands back the id that the whole document has.
pub(crate) fn holds(bytes: &[u8]) {
    let text = &super::text(bytes);
    match json::parse_any(text) {
        Ok(document) => {
            // The numbers in a file are never read: an empty report writes none.
            let file = OrderFile::new(document.id.clone(), &document.order, &Report::default());
            let again = json::parse_any(&file.text()).expect("what is written is read");
            assert_eq!((&again.id, &again.order), (&document.id, &document.order), "{text}");
            assert!(again.is_order);
        }
        Err((_, error)) => {
            for language in Language::ALL {
                assert!(hangtrue_link::say::file(language, &error).len() < 600, "{text}");
            }
        }
    }
    if let (Ok(request), Ok(document)) = (json::parse(text), json::parse_any(text)) {
        assert_eq!((request.id, request.survey), (document.id, document.order.survey));
    }
    if let Ok((id, order)) = json::order::parse(text) {
        assert_eq!(json::parse_any(text).map(|it| (it.id, it.order)), Ok((id, order)));
    }
}
