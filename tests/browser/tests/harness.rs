//! The harness itself: what it must notice, it notices.

use anyhow::{Result, ensure};
use hangtrue_browser::{Browser, Feature, Media, Screen, Site};

fn page(body: &str) -> Site {
    let head = "<!doctype html><title>t</title><link rel=icon href=data:,>";
    Site::default().text("/index.html", &format!("{head}{body}"))
}

pub(crate) async fn a_line_on_the_console_is_seen(browser: &mut Browser) -> Result<()> {
    for script in [
        "console.error('seen')",
        "setTimeout(() => { throw new Error('seen') })",
        "Promise.reject(new Error('seen'))",
    ] {
        browser.serve(page(&format!("<script>{script}</script>"))).await?;
        browser.open(Screen::DESK, "/").await?;
        browser.until("document.readyState === 'complete'").await?;
        ensure!(browser.check().await.is_err(), "not noticed: {script}");
        let lines = browser.take_console().await?;
        ensure!(matches!(&lines[..], [line] if line.contains("seen")), "{script}: {lines:?}");
    }
    Ok(())
}

pub(crate) async fn a_policy_broken_is_seen(browser: &mut Browser) -> Result<()> {
    let site = page("<script>window.ran = true</script>");
    browser.serve(site.header("Content-Security-Policy", "script-src 'self'")).await?;
    browser.open(Screen::DESK, "/").await?;
    ensure!(browser.value("window.ran === undefined").await? == true, "the policy was not sent");
    let lines = browser.take_console().await?;
    ensure!(matches!(&lines[..], [line] if line.contains("Content")), "{lines:?}");
    Ok(())
}

pub(crate) async fn a_request_to_another_origin_is_seen(browser: &mut Browser) -> Result<()> {
    let address = "http://elsewhere.example/a.svg";
    browser.serve(page(&format!("<img id=a src='{address}'>"))).await?;
    browser.open(Screen::DESK, "/").await?;
    browser.until("document.getElementById('a').complete").await?;
    // That it did not load is no matter: it was asked for.
    browser.take_console().await?;
    ensure!(browser.check().await.is_err(), "not noticed");
    ensure!(browser.take_requests().await?.iter().any(|seen| seen == address));
    Ok(())
}

pub(crate) async fn a_finger_touches(browser: &mut Browser) -> Result<()> {
    browser
        .serve(page(
            "<meta name=viewport content='width=device-width'><button id=a>a</button>
             <script>var touches = 0; addEventListener('touchstart', () => touches += 1)</script>",
        ))
        .await?;
    browser.open(Screen::PHONE, "/").await?;
    browser.tap("#a").await?;
    browser.until("touches === 1").await?;
    Ok(())
}

pub(crate) async fn media_are_what_they_are_set_to(browser: &mut Browser) -> Result<()> {
    browser.serve(page("<style>body { color: red } @media (prefers-color-scheme: dark) { body { color: blue } }</style>")).await?;
    browser.open(Screen::PHONE, "/").await?;
    let colour = "getComputedStyle(document.body).color";
    let light = browser.value(colour).await?;
    let media = Media::default();
    browser.set_media(Media { dark: true, still: true, ..media }).await?;
    ensure!(browser.value(colour).await? != light);
    browser.goto("/?again").await?;
    ensure!(browser.value(colour).await? != light, "it stays on the next page");
    browser.set_media(Media { contrast: true, ..media }).await?;
    browser.set_media(Media { contrast: true, dark: true, ..media }).await?;
    if browser.engine().lacks(Feature::ForcedColors).is_none() {
        browser.set_media(Media { forced: true, ..media }).await?;
    }
    browser.set_media(media).await?;
    ensure!(browser.value(colour).await? == light);
    Ok(())
}

pub(crate) async fn a_tap_on_what_is_covered_is_refused(browser: &mut Browser) -> Result<()> {
    let site = page(
        "<meta name=viewport content='width=device-width'>
         <button id=a onclick='taps += 1'>a</button><button id=b>b</button>
         <div id=over style='position:fixed;inset:50px 0 0'></div>
         <script>var taps = 0; b.style = 'position:absolute;top:100px'</script>",
    );
    browser.serve(site).await?;
    browser.open(Screen::PHONE, "/").await?;
    browser.tap("#a").await?;
    browser.until("taps === 1").await?;
    let refused = browser.tap("#b").await;
    ensure!(refused.is_err_and(|error| error.to_string().contains("over")));
    Ok(())
}

pub(crate) async fn a_stopped_server_refuses(browser: &mut Browser) -> Result<()> {
    const FETCH: &str = "return fetch('/').then(() => 'answered', () => 'refused')";
    browser.serve(page("here")).await?;
    browser.open(Screen::PHONE, "/").await?;
    browser.server.stop();
    ensure!(browser.run(FETCH, Vec::new()).await? == "refused");
    // Some engines tell of it.
    browser.take_console().await?;
    browser.server.resume()?;
    ensure!(browser.run(FETCH, Vec::new()).await? == "answered");
    browser.server.replace(page("another build"))?;
    browser.reload().await?;
    ensure!(browser.text("body").await? == "another build");
    Ok(())
}

/// A page that is asked while it is being left gives no answer: that is no answer of the next one.
pub(crate) async fn a_wait_goes_over_pages_that_are_left(browser: &mut Browser) -> Result<()> {
    let leaves = "<body><script>const at = Number(location.search.slice(1));
        if (at < 60) setTimeout(() => location.replace('/?' + (at + 1)), at % 4);
        else document.body.id = 'last'</script>";
    browser.serve(page(leaves)).await?;
    browser.open(Screen::PHONE, "/?0").await?;
    browser.until("location.search === '?60' && document.body?.id").await?;
    browser.find("#last").await?;
    // What is wrong in the page itself is still told at once.
    let wrong = browser.until("nowhere.at.all").await;
    ensure!(wrong.is_err_and(|error| format!("{error:#}").contains("nowhere")));
    Ok(())
}

pub(crate) async fn roles_and_names_are_computed(browser: &mut Browser) -> Result<()> {
    browser.serve(page("<label for=a>Width</label><input id=a>")).await?;
    browser.open(Screen::DESK, "/").await?;
    ensure!(browser.role("#a").await? == "textbox");
    ensure!(browser.label("#a").await? == "Width");
    browser.run("document.getElementById('a').focus()", Vec::new()).await?;
    browser.type_keys("96 ¼").await?;
    ensure!(browser.value("document.getElementById('a').value").await? == "96 ¼");
    Ok(())
}
