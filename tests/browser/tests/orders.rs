//! Invented orders, and the picture of a link read by an independent reader.

use anyhow::{Context as _, Result};
use hangtrue_browser::Browser;
use hangtrue_core::order::{Date, Order};
use hangtrue_core::profile::Profile;
use hangtrue_core::{Spot, check};

fn order(readings: &[(Spot, &str)]) -> Order {
    let mut order = Order {
        vehicle: "Unit 7, blue box".to_owned(),
        language: "en".to_owned(),
        date: Some(Date { year: 2026, month: 2, day: 3 }),
        ..Order::default()
    };
    for (spot, text) in readings {
        order.survey.add(*spot, text);
    }
    order
}

fn claimed(mut order: Order) -> Order {
    order.claimed = check(&order.survey, &Profile::default()).verdict;
    order
}

/// Eleven readings, one of them struck; nothing stands against it.
pub(crate) fn typical() -> Order {
    let mut order = order(&[
        (Spot::WidthLow, "92 1/4"),
        (Spot::WidthMiddle, "92 3/16"),
        (Spot::WidthHigh, "92 1/4"),
        (Spot::HeightLeft, "101 1/2"),
        (Spot::HeightCenter, "110 9/16"),
        (Spot::HeightCenter, "101 9/16"),
        (Spot::HeightRight, "101 1/2"),
        (Spot::HeaderCenter, "9 1/2"),
        (Spot::BowFirst, "1 1/4"),
        (Spot::DiagonalRising, "137 1/16"),
        (Spot::LoopSillToBow, "109 3/4"),
    ]);
    order.survey.prepared = true;
    order.survey.entries_mut(Spot::HeightCenter)[0].struck = true;
    order.note = "Liner inside: ask before cutting.".to_owned();
    order.contact = "yard@carrier.example".to_owned();
    order.old_door_in = Some(false);
    claimed(order)
}

/// Header and left post are to be built.
pub(crate) fn to_be_built() -> Order {
    let mut order = order(&[
        (Spot::WidthLow, "92 3/16"),
        (Spot::HeightCenter, "101 1/2"),
        (Spot::HeaderCenter, "6"),
        (Spot::BowFirst, "2 1/4"),
        (Spot::PostLeft, "1 1/2"),
    ]);
    order.old_door_in = Some(true);
    claimed(order)
}

/// Every spot read six times, every text far too long, findings without end; but for
/// the note of a length that a link and a code still hold.
pub(crate) fn crowded(texts: usize) -> Order {
    let mut order = order(&[]);
    for (at, spot) in (0..).zip(Spot::ALL) {
        for again in 0..5 {
            let text = format!("{} {}/16", 40 + 7 * at + again * (at + 3), 2 * again + 1);
            order.survey.add(spot, &text);
        }
        order.survey.add(spot, "twenty-two and eleven sixteenths, more or less");
        order.survey.entries_mut(spot)[1].struck = true;
    }
    order.vehicle = "The vehicle with a very long name, ".repeat(texts);
    order.contact = "WWWWWWWWWWWW@".repeat(texts);
    order.note = "This says at length what nobody needs to know. ".repeat(5 * texts);
    order.profile = Some(("A dealer with quite a long name".repeat(texts), 1234));
    claimed(order)
}

/// The order as its link has it.
pub(crate) fn payload(order: &Order) -> Result<String> {
    hangtrue_link::encode(order).map_err(|error| anyhow::anyhow!("no link: {error:?}"))
}

/// Opens the order at the dealer's, and returns its link.
pub(crate) async fn open(browser: &Browser, order: &Order) -> Result<String> {
    let payload = payload(order)?;
    // From another page: a change of the fragment alone would load nothing.
    browser.goto(&format!("/?{}#{payload}", payload.len())).await?;
    browser.find("main.step-opened").await?;
    Ok(format!("{}/#{payload}", browser.server.origin()))
}

/// A code that was read from a picture.
pub(crate) struct Code {
    /// What it says.
    pub(crate) text: String,
    /// How much of it may be lost: `L`, `M`, `Q` or `H`.
    pub(crate) level: char,
}

/// The one code in a grey picture.
pub(crate) fn decoded(width: usize, height: usize, grey: &[u8]) -> Result<Code> {
    let mut picture =
        rqrr::PreparedImage::prepare_from_greyscale(width, height, |x, y| grey[y * width + x]);
    let grids = picture.detect_grids();
    let grid = grids.first().context("there is no code in the picture")?;
    let (about, text) = grid.decode()?;
    // The order of ISO/IEC 18004's two bits.
    let level = ['M', 'L', 'H', 'Q'][usize::from(about.ecc_level)];
    Ok(Code { text, level })
}
