//! The harness itself: what it must notice, it notices.

use anyhow::{Result, ensure};
use hangtrue_browser::{Browser, Screen, Server, Site};

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
    let other =
        Server::start(Site::default().text("/a.svg", "<svg xmlns='http://www.w3.org/2000/svg'/>"))?;
    let address = format!("{}/a.svg", other.origin());
    browser.serve(page(&format!("<img id=a src='{address}'>"))).await?;
    browser.open(Screen::DESK, "/").await?;
    browser.until("document.getElementById('a').complete").await?;
    ensure!(other.requests() == ["200 /a.svg"]);
    ensure!(browser.check().await.is_err(), "not noticed");
    ensure!(browser.take_requests().await?.contains(&address));
    Ok(())
}

pub(crate) async fn a_tap_on_what_is_covered_is_refused(browser: &mut Browser) -> Result<()> {
    let site = page(
        "<meta name=viewport content='width=device-width'>
         <button id=a onclick='taps += 1'>a</button><button id=b>b</button>
         <div id=over style='position:fixed;inset:50px 0 0'></div>
         <script>var taps = 0, touches = 0; b.style = 'position:absolute;top:100px';
         addEventListener('touchstart', () => touches += 1)</script>",
    );
    browser.serve(site).await?;
    browser.open(Screen::PHONE, "/").await?;
    browser.tap("#a").await?;
    browser.until("taps === 1 && touches === 1").await?;
    let refused = browser.tap("#b").await;
    ensure!(refused.is_err_and(|error| error.to_string().contains("over")));
    Ok(())
}

pub(crate) async fn a_stopped_server_refuses(browser: &mut Browser) -> Result<()> {
    browser.serve(page("here")).await?;
    browser.open(Screen::PHONE, "/").await?;
    browser.server.stop();
    let answer = browser
        .run("return fetch('/').then(() => 'answered', () => 'refused')", Vec::new())
        .await?;
    ensure!(answer == "refused");
    ensure!(!browser.take_console().await?.is_empty());
    let (site, port) = (page("back"), browser.server.port());
    browser.server = Server::start_at(site, port)?;
    browser.reload().await?;
    ensure!(browser.text("body").await? == "back");
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
