//! What a screen reader is told: names, roles, structure, the live region, the summary of what
//! stands against going on and where it leads.

use crate::walk::at;
use crate::{builder, hang, states};
use anyhow::{Result, ensure};
use fantoccini::key::Key;
use hangtrue_browser::{Browser, Screen};
use serde_json::json;

/// A script body: what is wrong with the page's structure for who hears it.
const STRUCTURE: &str = "
    const shown = css => [...document.querySelectorAll(css)].filter(it => it.checkVisibility());
    const wrong = [];
    const one = css => {
        const found = shown(css).length;
        if (found !== 1) wrong.push(`${found} of ${css}`);
    };
    one('main'); one('h1');
    // The builder speaks by what it makes of the profile, the others by a line of their own.
    one(document.querySelector('.builder') ? '[role=status]#outcome' : '[role=status]#spoken');
    if (!document.documentElement.lang) wrong.push('no language');
    if (!document.title) wrong.push('no title');
    let level = 0;
    for (const it of shown('h1, h2, h3, h4')) {
        const is = Number(it.localName[1]);
        if (is > level + 1) wrong.push(`${it.localName} behind h${level}: ${it.textContent}`);
        level = is;
    }
    const ids = [...document.querySelectorAll('[id]')].map(it => it.id);
    for (const id of ids) if (ids.indexOf(id) !== ids.lastIndexOf(id)) wrong.push(`${id} twice`);
    for (const name of ['aria-describedby', 'aria-labelledby', 'for'])
        for (const it of document.querySelectorAll(`[${name}]`))
            for (const id of it.getAttribute(name).split(' '))
                if (!document.getElementById(id)) wrong.push(`${name}=${id} leads nowhere`);
    for (const it of shown('[aria-invalid=true]'))
        if (!it.getAttribute('aria-describedby').split(' ').some(
            id => document.getElementById(id)?.querySelector('.problem')
                || it.closest('.hang') && document.getElementById(id)?.textContent.trim())
            && !it.closest('.desk, .builder'))
            wrong.push(`${it.id} does not say what is wrong with it`);
    return wrong;";

async fn is_told(browser: &Browser, name: &str) -> Result<()> {
    let wrong = browser.run(STRUCTURE, Vec::new()).await?;
    ensure!(wrong == json!([]), "{name}: {wrong}");
    let all = browser.heard("main input, main select, main textarea, button, a[href]").await?;
    ensure!(!all.is_empty(), "{name}: nothing to be told");
    for (role, label, markup) in &all {
        ensure!(!label.trim().is_empty(), "{name}: {role} without a name: {markup}");
        let expected: &[&str] = match markup.get(1..3) {
            // HTML gives a chooser of files no role; the engines tell it as what it is pressed for.
            Some("in") if markup.contains("type=\"file\"") => &["button"],
            Some("in") => &["textbox", "radio", "checkbox", "spinbutton", "slider"],
            // WebKit tells a list that folds out as the button it is pressed by.
            Some("se") => &["combobox", "listbox", "button"],
            Some("te") => &["textbox"],
            Some("bu") => &["button"],
            _ => &["link"],
        };
        ensure!(expected.contains(&role.as_str()), "{name}: a {role} is {markup}");
    }
    // Two buttons of one name that do different things cannot be told apart by ear.
    let mut names: Vec<(&str, &str)> = all
        .iter()
        .filter(|(role, ..)| role == "button")
        .map(|(_, label, markup)| (label.as_str(), markup.as_str()))
        .collect();
    names.sort_unstable();
    for pair in names.windows(2) {
        ensure!(pair[0].0 != pair[1].0 || pair[0].1 == pair[1].1, "{name}: {pair:?}");
    }
    Ok(())
}

pub(crate) async fn every_state_of_the_walk(browser: &mut Browser) -> Result<()> {
    states::of_the_walk(browser, Screen::PHONE, "en", is_told).await
}

pub(crate) async fn every_state_beside_it(browser: &mut Browser) -> Result<()> {
    states::beside_the_walk(browser, Screen::PHONE, is_told).await
}

pub(crate) async fn every_state_of_the_desk(browser: &mut Browser) -> Result<()> {
    states::of_the_desk(browser, Screen::DESK, is_told).await
}

pub(crate) async fn every_state_of_hanging(browser: &mut Browser) -> Result<()> {
    hang::states(browser, Screen::PHONE, "en", is_told).await
}

pub(crate) async fn every_state_of_the_builder(browser: &mut Browser) -> Result<()> {
    builder::states(browser, Screen::DESK, is_told).await
}

pub(crate) async fn a_new_screen_is_heard_from_its_heading(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/").await?;
    browser.find("#app[data-ready]").await?;
    for step in ["frame", "width"] {
        browser.tap("button[type=submit]").await?;
        at(browser, step).await?;
        browser.until("document.activeElement.id === 'heading'").await?;
        ensure!(browser.role("#heading").await? == "heading");
    }
    Ok(())
}

pub(crate) async fn a_reading_is_spoken_once(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/#/width").await?;
    browser.find("#app[data-ready]").await?;
    at(browser, "width").await?;
    browser
        .run(
            "window.said = [];
             const region = document.getElementById('spoken');
             new MutationObserver(() => said.push(region.textContent))
                 .observe(region, { childList: true, characterData: true, subtree: true });",
            Vec::new(),
        )
        .await?;
    browser.tap("[id='width.low']").await?;
    browser.type_keys("92 3/16").await?;
    browser.until("said.length").await?;
    let said = browser.value("said.filter(Boolean)").await?;
    ensure!(said.as_array().is_some_and(|it| it.len() == 1), "{said}");
    ensure!(said[0].as_str().is_some_and(|it| it.contains("92\u{a0}3/16")), "{said}");
    ensure!(browser.role("#spoken").await? == "status");
    let live =
        browser.value("document.querySelectorAll('[aria-live], [role=alert]').length").await?;
    ensure!(live == 1, "{live} live regions would talk at once");
    Ok(())
}

pub(crate) async fn a_reading_of_hanging_is_spoken(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/hang.html").await?;
    browser.find("#app[data-ready]").await?;
    browser.tap("[id='order.width']").await?;
    browser.type_keys("92 3/16").await?;
    browser.until("document.getElementById('spoken').textContent.includes('92\u{a0}3/16')").await?;
    browser.run("document.activeElement.select()", Vec::new()).await?;
    browser.type_keys("921/4").await?;
    browser
        .until("document.getElementById('spoken').textContent === '92\u{a0}1/4\u{a0}in?'")
        .await?;
    let field = "document.getElementById('order.width')";
    ensure!(browser.value(&format!("{field}.getAttribute('aria-invalid')")).await? == "true");
    Ok(())
}

pub(crate) async fn the_summary_leads_to_the_field(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/#/width").await?;
    browser.find("#app[data-ready]").await?;
    at(browser, "width").await?;
    browser.tap("[id='width.high']").await?;
    browser.type_keys("921/4").await?;
    browser.type_keys(&char::from(Key::Enter).to_string()).await?;
    browser.until("document.activeElement.id === 'problems'").await?;
    ensure!(browser.role("#problems").await? == "region");
    ensure!(!browser.label("#problems").await?.is_empty());
    // By keyboard: the next stop is the first line, which leads to its field.
    browser.type_keys(&char::from(Key::Tab).to_string()).await?;
    ensure!(browser.value("document.activeElement.matches('#problems button')").await? == true);
    let sentence = browser.value("document.activeElement.innerText").await?;
    browser.type_keys(&char::from(Key::Enter).to_string()).await?;
    browser.until("document.activeElement.id === 'width.high'").await?;
    let field = "document.getElementById('width.high')";
    ensure!(browser.value(&format!("{field}.getAttribute('aria-invalid')")).await? == "true");
    let told = browser
        .value(&format!(
            "{field}.getAttribute('aria-describedby').split(' ')
                 .map(id => document.getElementById(id).innerText).join(' ')"
        ))
        .await?;
    let (told, sentence) =
        (told.as_str().unwrap_or_default(), sentence.as_str().unwrap_or_default());
    ensure!(told.contains(sentence), "the field says `{told}`, not `{sentence}`");
    Ok(())
}
