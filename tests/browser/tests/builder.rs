//! The builder: a form made from the schema, the survey beside it, the files to take away.

use anyhow::{Context as _, Result, ensure};
use hangtrue_browser::{Browser, Screen, Site};
use hangtrue_core::profile::Profile;
use hangtrue_link::json::profile::parse;
use serde_json::json;

use crate::desk::asks_before_leaving;
use crate::embed::{demo, within};

const PRAIRIE: &str = include_str!("../../../demo/profiles/prairie.json");

async fn opened(browser: &mut Browser, screen: Screen) -> Result<()> {
    browser.serve(demo()?).await?;
    browser.open(screen, "/builder.html").await?;
    browser.find("#app[data-ready]").await?;
    ensure!(browser.value("document.documentElement.scrollWidth > innerWidth").await? == false);
    ensure!(browser.value("innerWidth").await? == screen.width, "the page is too wide");
    Ok(())
}

/// Unfolds the groups around `path`.
async fn unfold(browser: &Browser, path: &str) -> Result<()> {
    for (end, _) in path.match_indices('.') {
        let fold = format!("[data-act={}]", json!(format!("fold:{}", &path[..end])));
        let shut = format!("{fold}[aria-expanded=false]");
        if browser.value(&format!("document.querySelector({})", json!(shut))).await?.is_object() {
            browser.tap(&shut).await?;
            browser.find(&format!("{fold}[aria-expanded=true]")).await?;
        }
    }
    Ok(())
}

/// Types into the field at `path`, in the place of what is there.
async fn fill(browser: &Browser, path: &str, text: &str) -> Result<()> {
    unfold(browser, path).await?;
    let select = format!(
        "(() => {{ const field = document.getElementById({0});
            field.focus(); field.select(); return document.activeElement === field; }})()",
        json!(path)
    );
    browser.until(&select).await?;
    browser.type_keys(text).await
}

/// What the link to that file holds.
async fn file(browser: &Browser, name: &str) -> Result<String> {
    let link = format!("document.querySelector('a[download={}]')", json!(name));
    browser.until(&link).await?;
    let text = browser
        .run(
            "return decodeURIComponent(arguments[0].slice(arguments[0].indexOf(',') + 1))",
            vec![browser.value(&format!("{link}.href")).await?],
        )
        .await?;
    text.as_str().map(str::to_owned).context("a text")
}

async fn choose(browser: &Browser, text: &str) -> Result<()> {
    browser
        .run(
            "const files = new DataTransfer();
             files.items.add(new File([arguments[0]], 'profile.json', { type: 'application/json' }));
             const input = document.querySelector('#file');
             input.files = files.files;
             input.dispatchEvent(new Event('change', { bubbles: true }));",
            vec![json!(text)],
        )
        .await?;
    Ok(())
}

/// The builder empty, with a profile that is all unfolded, and with what is wrong at its field.
pub(crate) async fn states(
    browser: &mut Browser,
    screen: Screen,
    visit: impl AsyncFn(&Browser, &str) -> Result<()>,
) -> Result<()> {
    opened(browser, screen).await?;
    visit(browser, "builder-empty").await?;
    choose(browser, PRAIRIE).await?;
    browser.until("document.getElementById('name').value === 'Prairie Door Works'").await?;
    let shut = "[data-act^='fold:'][aria-expanded=false]";
    while browser.value(&format!("document.querySelector({})", json!(shut))).await?.is_object() {
        browser.tap(shut).await?;
    }
    visit(browser, "builder-unfolded").await?;
    fill(browser, "colors.light.ink", "#8a9a8c").await?;
    browser.find(".outcome .what").await?;
    visit(browser, "builder-wrong").await
}

fn read(text: &str) -> Result<Profile> {
    parse(text).map_err(|error| anyhow::anyhow!("{error:?}"))
}

pub(crate) async fn a_profile_is_made_shown_and_taken_away(browser: &mut Browser) -> Result<()> {
    opened(browser, Screen::DESK).await?;
    ensure!(browser.value("document.querySelector('a[download]')").await?.is_null(), "no name yet");
    browser.shoot("builder-empty").await?;
    fill(browser, "name", "Demo Doors").await?;
    fill(browser, "revision", "7").await?;
    fill(browser, "contact.email", "orders@doors.example").await?;
    fill(browser, "limits.width.most", "90 in").await?;
    fill(browser, "limits.width.reason", "our widest panel").await?;
    // The survey beside it goes by what is typed.
    let rules = "s.querySelector('#rules')?.innerText.includes('Demo Doors, revision 7')";
    browser.until(&within("#live", rules)).await?;
    browser.shoot("builder-filled").await?;
    let profile = read(&file(browser, "profile.json").await?)?;
    ensure!(profile.name == "Demo Doors" && profile.revision == 7, "{profile:?}");
    ensure!(profile.contact.email == "orders@doors.example" && profile.rulings.len() == 1);

    // The lines work as they are: pasted into a page of this origin, with their hashes.
    let snippet = file(browser, "snippet.html").await?;
    let origin = browser.server.origin();
    ensure!(snippet.contains(&format!("src=\"{origin}/embed/")), "{snippet}");
    ensure!(
        snippet.contains("integrity=\"sha384-") && snippet.contains("wasm-unsafe-eval"),
        "{snippet}"
    );
    let page = snippet.replace(&origin, "");
    let page = format!("<!doctype html><title>t</title><link rel=icon href=data:,>{page}");
    let profile = file(browser, "profile.json").await?;
    let site = Site::dist()?.text("/host/index.html", &page).text("/host/profile.json", &profile);
    browser.serve(site).await?;
    browser.open(Screen::PHONE, "/host/").await?;
    let rules = "s.querySelector('#rules')?.innerText.includes('Demo Doors, revision 7')";
    browser.until(&within("hangtrue-survey", rules)).await?;
    Ok(())
}

pub(crate) async fn a_profile_that_is_opened_is_edited(browser: &mut Browser) -> Result<()> {
    opened(browser, Screen::PHONE).await?;
    choose(browser, PRAIRIE).await?;
    browser.until("document.getElementById('name').value === 'Prairie Door Works'").await?;
    browser.shoot("builder-opened-phone").await?;
    fill(browser, "doors.1.preload_turns", "4").await?;
    let changed = read(&file(browser, "profile.json").await?)?;
    let mut expected = read(PRAIRIE)?;
    expected.doors[1].preload_turns = Some(4.0);
    ensure!(changed == expected, "{changed:?}");
    // One more choice of a question, and one door line less.
    unfold(browser, "questions.0.choices.3").await?;
    browser.tap("[data-act='add:questions.0.choices']").await?;
    fill(browser, "questions.0.choices.3.key", "felt").await?;
    fill(browser, "questions.0.choices.3.label", "Felt").await?;
    browser.tap("[data-act='remove:doors.0']").await?;
    let changed = read(&file(browser, "profile.json").await?)?;
    ensure!(changed.doors.len() == 1 && changed.doors[0].key == "high-lift", "{changed:?}");
    let questions = format!("{:?}", changed.questions);
    ensure!(questions.contains("felt"), "{questions}");
    ensure!(asks_before_leaving(browser).await?, "what was changed would be lost");
    browser.tap("a[download='profile.json']").await?;
    ensure!(!asks_before_leaving(browser).await?, "it was downloaded");
    Ok(())
}

pub(crate) async fn what_is_wrong_stands_at_its_field(browser: &mut Browser) -> Result<()> {
    opened(browser, Screen::PHONE).await?;
    choose(browser, PRAIRIE).await?;
    fill(browser, "colors.light.ink", "#8a9a8c").await?;
    let told = browser.text(".outcome .what").await?;
    ensure!(told.contains("ink on paper") && told.contains("2.81 to 1"), "{told}");
    ensure!(browser.value("document.querySelector('a[download]')").await?.is_null());
    browser.tap("[data-act='go:colors.light']").await?;
    browser.until("document.activeElement.id === 'colors.light'").await?;
    browser.shoot("builder-contrast-phone").await?;
    fill(browser, "colors.light.ink", "#1d2b1f").await?;
    fill(browser, "contact.page", "javascript:alert(1)").await?;
    let at_field = "document.getElementById('contact.page').closest('.line').innerText";
    let told = browser.until(&format!("{at_field}.includes('https') && {at_field}")).await?;
    ensure!(told.as_str().is_some_and(|told| told.contains("script")), "{told}");
    let invalid = "document.getElementById('contact.page').getAttribute('aria-invalid')";
    ensure!(browser.value(invalid).await? == "true");
    choose(browser, "{").await?;
    browser.until("document.querySelector('[role=alert]')?.innerText.includes('not JSON')").await?;
    Ok(())
}

pub(crate) async fn it_speaks_spanish_and_french(browser: &mut Browser) -> Result<()> {
    for (screen, name) in [(Screen::PHONE, "phone"), (Screen::DESK, "desk")] {
        opened(browser, screen).await?;
        choose(browser, PRAIRIE).await?;
        browser.until("document.getElementById('name').value === 'Prairie Door Works'").await?;
        fill(browser, "colors.light.ink", "#8a9a8c").await?;
        for (language, heading, aside, survey) in [
            ("es", "Perfil de un distribuidor", "Como la ven sus clientes", "Mida"),
            ("fr", "Profil d’un distributeur", "Comme vos clients la voient", "Mesur"),
        ] {
            browser.tap(&format!("nav.languages [lang={language}]")).await?;
            browser
                .until(&format!(
                    "document.documentElement.lang === '{language}' && document.title.includes({heading}) \
                     && document.querySelector('#heading').innerText === {heading}",
                    heading = json!(heading)
                ))
                .await?;
            // Beside it, the survey and its heading speak it too.
            let headings = "[...document.querySelectorAll('aside h2')]
                .filter((heading) => heading.checkVisibility()).map((heading) => heading.innerText)";
            ensure!(browser.value(headings).await? == json!([aside]), "{language}");
            let speaks = format!("s.querySelector('#heading')?.innerText.startsWith('{survey}')");
            browser.until(&within("#live", &speaks)).await?;
            let ink = "document.getElementById('colors.light.ink').value === '#8a9a8c'";
            ensure!(browser.value(ink).await? == true, "what was typed is still there");
            let wide = "document.documentElement.scrollWidth > innerWidth";
            ensure!(browser.value(wide).await? == false, "{language}: the page is too wide");
            browser.value("scrollTo(0, 0)").await?;
            browser.shoot(&format!("builder-{language}-{name}")).await?;
            browser.value("document.getElementById('colors.light').scrollIntoView()").await?;
            browser.shoot(&format!("builder-{language}-{name}-error")).await?;
        }
        browser.reload().await?;
        browser.until("document.documentElement.lang === 'fr'").await?;
        browser.tap("nav.languages [lang=en]").await?;
    }
    Ok(())
}
