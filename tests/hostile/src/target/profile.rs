//! A dealer's rules.

use hangtrue_core::order::Order;
use hangtrue_core::profile::Profile;
use hangtrue_core::say::Language;
use hangtrue_core::{Spot, check_order};
use hangtrue_link::json::profile;
use hangtrue_link::json::text::{parse, pretty, print};

/// A profile that is read is read as the same from its tree written again; an order is
/// judged by it; a refusal can be said, shortly.
pub(crate) fn holds(bytes: &[u8]) {
    let text = &super::text(bytes);
    match profile::parse(text) {
        Ok(read) => {
            let tree = parse(text).expect("a profile is JSON");
            assert_eq!(profile::parse(&print(&tree)).as_ref(), Ok(&read), "{text}");
            assert_eq!(profile::parse(&pretty(&tree)).as_ref(), Ok(&read), "{text}");
            judges(&read);
        }
        Err(error) => {
            for language in Language::ALL {
                assert!(hangtrue_link::say::profile(language, &error).len() < 900, "{text}");
            }
        }
    }
}

fn judges(profile: &Profile) {
    let mut order = Order::default();
    for (spot, text) in [
        (Spot::WidthMiddle, "92 3/16"),
        (Spot::HeightCenter, "101 1/2"),
        (Spot::HeaderCenter, "9 1/2"),
        (Spot::BowFirst, "1 1/4"),
    ] {
        order.survey.add(spot, text);
    }
    super::check::said(&check_order(&order, profile));
}
