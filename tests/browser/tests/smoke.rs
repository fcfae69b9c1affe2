//! The site loads, as itself and from nowhere else.

use anyhow::{Result, ensure};
use hangtrue_browser::{Browser, Screen};

pub(crate) async fn the_page_loads(browser: &mut Browser) -> Result<()> {
    for (screen, name) in [
        (Screen::PHONE, "first-phone"),
        (Screen::SMALL_PHONE, "first-small-phone"),
        (Screen::DESK, "first-desk"),
    ] {
        browser.open(screen, "/").await?;
        browser.until("document.readyState === 'complete'").await?;
        ensure!(browser.value("innerWidth").await? == screen.width);
        ensure!(browser.value("document.title").await? == "Hangtrue");
        let overflow = browser
            .value("document.documentElement.scrollWidth > document.documentElement.clientWidth")
            .await?;
        ensure!(overflow == false, "the page scrolls sideways at {} px", screen.width);
        browser.shoot(name).await?;
    }
    Ok(())
}
