//! The code on the screen, read from a picture of it; the script for the telephone; an order
//! that was sent.

use std::fs::File;
use std::io::BufReader;
use std::path::Path;

use crate::fits::loses_nothing;
use crate::orders::{crowded, decoded, open, to_be_built, typical};
use crate::walk::at;
use anyhow::{Context as _, Result, ensure};
use hangtrue_browser::{Browser, Screen};

/// A picture that [`Browser::shoot`] took, in shades of grey.
fn grey(browser: &Browser, name: &str) -> Result<(usize, usize, Vec<u8>)> {
    let shots = Path::new(env!("CARGO_MANIFEST_DIR")).join("../shots");
    let file = shots.join(browser.engine().name()).join(format!("{name}.png"));
    let mut decoder = png::Decoder::new(BufReader::new(File::open(file)?));
    decoder.set_transformations(png::Transformations::normalize_to_color8());
    let mut reader = decoder.read_info()?;
    let mut bytes = vec![0; reader.output_buffer_size().context("a picture that fits memory")?];
    let frame = reader.next_frame(&mut bytes)?;
    let samples = frame.color_type.samples();
    let grey = bytes[..frame.buffer_size()].chunks(samples);
    let grey = grey.map(|dot| if samples < 3 { dot[0] } else { dot[1] }).collect();
    Ok((frame.width as usize, frame.height as usize, grey))
}

/// Makes the typical order the draft, and returns its link.
pub(crate) async fn draft(browser: &Browser) -> Result<String> {
    open(browser, &typical()).await?;
    browser.tap("form [type=submit]").await?;
    at(browser, "check").await?;
    browser.tap("[type=submit]").await?;
    at(browser, "send").await?;
    let link = browser.value("document.querySelector('a.url').href").await?;
    link.as_str().map(str::to_owned).context("the order has a link")
}

pub(crate) async fn the_code_on_the_screen_is_read(browser: &mut Browser) -> Result<()> {
    for screen in [Screen::SMALL_PHONE, Screen::PHONE, Screen::DESK] {
        browser.open(screen, "/").await?;
        let link = draft(browser).await?;
        browser.tap("a[href='#/scan']").await?;
        at(browser, "scan").await?;
        let name = format!("scan-{}", screen.width);
        browser.shoot(&name).await?;
        for scheme in ["light", "dark"] {
            let (width, height, grey) = grey(browser, &format!("{name}-{scheme}"))?;
            let read = decoded(width, height, &grey)?;
            ensure!(read.text == link, "{name}-{scheme}: {}, not {link}", read.text);
            ensure!("MQH".contains(read.level), "{name}-{scheme}: level {}", read.level);
        }
        // As large as the screen allows: all of its width, or of its height below the heading.
        let side = browser.value("document.querySelector('.qr svg').clientWidth").await?;
        let side = side.as_f64().context("a width")?;
        // Beside a scroll bar, where an engine shows one.
        let across = browser.value("document.documentElement.clientWidth").await?;
        let across = across.as_f64().context("a width")?;
        let room = across.min(f64::from(screen.height - 120));
        ensure!(side >= room, "{side} of {room} px");
        let in_view = "document.querySelector('.qr').getBoundingClientRect().bottom <= innerHeight";
        ensure!(browser.value(in_view).await? == true, "the code is not all in view");
        browser.back().await?;
        at(browser, "send").await?;
        let overflow = browser
            .value("document.documentElement.scrollWidth > document.documentElement.clientWidth")
            .await?;
        ensure!(overflow == false, "the order scrolls sideways at {} px", screen.width);
        browser.shoot(&format!("order-{}", screen.width)).await?;
    }
    Ok(())
}

pub(crate) async fn voice(browser: &mut Browser) -> Result<()> {
    for screen in [Screen::PHONE, Screen::DESK] {
        browser.open(screen, "/").await?;
        draft(browser).await?;
        browser.tap("a[href='#/voice']").await?;
        at(browser, "voice").await?;
        let text = browser.text("main").await?;
        for line in [
            "Post-to-post width: nine two and three sixteenths.",
            "Sill-to-header height: one zero one and one half.",
            "Header depth: nine and one half.",
            "Roof-bow depth: one and one quarter.",
        ] {
            ensure!(text.contains(line), "{line}\n{text}");
        }
        ensure!(!text.contains("110"), "a struck reading is not said");
        let small = browser
            .value("parseFloat(getComputedStyle(document.querySelector('.script li')).fontSize)")
            .await?;
        ensure!(small.as_f64() >= Some(22.0), "{small} px is small for the yard");
        let overflow = browser
            .value("document.documentElement.scrollWidth > document.documentElement.clientWidth")
            .await?;
        ensure!(overflow == false, "it scrolls sideways at {} px", screen.width);
        browser.shoot(&format!("voice-{}", screen.width)).await?;
    }
    Ok(())
}

pub(crate) async fn an_order_that_was_sent(browser: &mut Browser) -> Result<()> {
    for screen in [Screen::SMALL_PHONE, Screen::PHONE, Screen::DESK] {
        browser.set_screen(screen).await?;
        for (name, order) in
            [("typical", typical()), ("built", to_be_built()), ("crowded", crowded(4))]
        {
            open(browser, &order).await?;
            loses_nothing(browser, &format!("{name} at {} px", screen.width)).await?;
            browser.shoot(&format!("opened-{name}-{}", screen.width)).await?;
        }
    }
    Ok(())
}
