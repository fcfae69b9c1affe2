//! The first screens, while the second module is not there yet.

use anyhow::{Context as _, Result, ensure};
use hangtrue_browser::{Browser, Screen, Site, root};

use crate::walk::{READINGS, at, leave_out_the_rest, past_the_frame};

/// The address of the second module.
fn rest() -> Result<String> {
    for file in std::fs::read_dir(root().join("dist"))? {
        let name = file?.file_name();
        let name = name.to_str().context("a file name that is no text")?;
        if name.starts_with("hangtrue-rest-") {
            return Ok(format!("/{name}"));
        }
    }
    anyhow::bail!("dist/ has no second module")
}

/// Something waits, and why is said.
const NOTICE: &str = "document.querySelector('.notice')?.innerText.includes('tried again')";

/// The four dimensions are taken by the first module alone; what needs the second (words in a reading,
/// why one cannot be, what comes after) waits for it, says so, and then happens.
pub(crate) async fn four_dimensions_without_the_second_module(browser: &mut Browser) -> Result<()> {
    // No worker either: it would keep what stands in the module's place.
    let without = Site::dist()?.text(&rest()?, "not there").text("/worker.js", "");
    browser.server.replace(without)?;
    browser.open(Screen::PHONE, "/").await?;
    browser.find("#app[data-ready]").await?;
    past_the_frame(browser).await?;
    for (field, text) in READINGS {
        let step = field.split('.').next().unwrap_or_default();
        at(browser, step).await?;
        browser.tap(&format!("[id='{field}']")).await?;
        let waits = match step {
            "width" => "ninety two",
            "height" => "912",
            _ => "",
        };
        if !waits.is_empty() {
            browser.type_keys(waits).await?;
            browser.tap("button[type=submit]").await?;
            browser.until(NOTICE).await?;
            at(browser, step).await?;
            browser.tap(&format!("[id='{field}']")).await?;
            browser
                .run(&format!("document.getElementById('{field}').select()"), Vec::new())
                .await?;
        }
        browser.type_keys(text).await?;
        browser.tap("button[type=submit]").await?;
    }
    browser.until(NOTICE).await?;
    at(browser, "bow").await?;
    browser.shoot("partial-phone").await?;
    browser.set_screen(Screen::DESK).await?;
    browser.shoot("partial-desk").await?;
    browser.server.replace(Site::dist()?.text("/worker.js", ""))?;
    leave_out_the_rest(browser).await?;
    ensure!(browser.value("document.querySelector('.notice')").await?.is_null());
    browser.tap("button[type=submit]").await?;
    at(browser, "send").await
}
