//! At the desk: what was sent beside what is said, each by a way that a counter has.

use crate::desk::open;
use crate::offline::{has_its_rules_kept, with_its_rules_is_kept};
use crate::orders::{to_be_built, typical};
use anyhow::{Context as _, Result, ensure};
use hangtrue_browser::{Browser, Screen};
use hangtrue_core::check;
use hangtrue_core::order::Order;
use hangtrue_core::profile::Profile;
use hangtrue_core::say::Language;
use hangtrue_link::code::{Said, characters, small, spaced, spell};
use serde_json::json;

/// Pastes into the box that takes orders, as from the clipboard.
pub(crate) async fn paste(browser: &Browser, text: &str) -> Result<()> {
    browser.find("#paste").await?;
    let inserted = browser
        .run(
            "const box = document.getElementById('paste');
             box.scrollIntoView({ block: 'center' });
             box.focus();
             box.select();
             return document.execCommand('insertText', false, arguments[0])",
            vec![json!(text)],
        )
        .await?;
    ensure!(inserted == true, "the box takes no text");
    Ok(())
}

fn link(order: &Order) -> Result<String> {
    let payload = crate::orders::payload(order)?;
    Ok(format!("https://dealer.example/door/#{payload}"))
}

/// Types the four numbers.
pub(crate) async fn say(browser: &Browser, numbers: [&str; 4]) -> Result<()> {
    let fields = ["width.middle", "height.center", "header.center", "bow.first"];
    for (field, number) in fields.into_iter().zip(numbers) {
        browser.run("document.getElementById(arguments[0]).select()", vec![json!(field)]).await?;
        browser.type_keys(number).await?;
    }
    Ok(())
}

async fn no_sideways(browser: &Browser, name: &str) -> Result<()> {
    let wide = browser.value("document.documentElement.scrollWidth > innerWidth").await?;
    ensure!(wide == false, "{name} scrolls sideways");
    Ok(())
}

pub(crate) async fn a_mail_beside_the_call_names_what_was_misheard(
    browser: &mut Browser,
) -> Result<()> {
    open(browser).await?;
    let mail = format!("> Order as agreed:\n> {}.\n> Regards", link(&typical())?);
    say(browser, ["92 3/16", "101 1/2", "5 1/2", "1 1/4"]).await?;
    paste(browser, &mail).await?;
    browser.find("#sent-0").await?;
    let first = browser.text(".compare tbody tr").await?;
    for piece in ["Header depth", "5 1/2 in", "9 1/2 in", "−4 in", "sound alike"] {
        ensure!(first.contains(piece), "{piece} is not in {first}");
    }
    let apart = "[...document.querySelectorAll('.apart')].map(row => row.innerText)";
    let apart = browser.value(apart).await?;
    ensure!(apart.as_array().map(Vec::len) == Some(1), "{apart}");
    browser.until("document.getElementById('paste').value === ''").await?;
    browser.shoot("desk-sent-1280").await?;
    browser.run("document.querySelector('.sent').scrollIntoView()", Vec::new()).await?;
    browser.shoot("desk-sent-compared-1280").await?;
    browser.run("document.querySelector('.order').scrollIntoView()", Vec::new()).await?;
    browser.shoot("desk-sent-order-1280").await?;
    let boxed = "[...document.querySelectorAll('.order :is(figure, svg)')]
        .filter(it => getComputedStyle(it).borderTopWidth !== '0px').length";
    ensure!(browser.value(boxed).await? == 0, "a drawing stands in a box of the order's");

    // The caller says it again: nothing differs any more.
    say(browser, ["92 3/16", "101 1/2", "9 1/2", "1 1/4"]).await?;
    browser.until("!document.querySelector('.apart')").await?;
    ensure!(browser.text(".compare .agrees").await?.contains("as they were sent"));
    for screen in [Screen::PHONE, Screen::SMALL_PHONE] {
        browser.set_screen(screen).await?;
        no_sideways(browser, "the desk with an order").await?;
        let hidden = "(box => box.scrollWidth - box.clientWidth)(document.querySelector('.compare .scroll'))";
        ensure!(browser.value(hidden).await? == 0, "what was sent is out of sight");
        browser.run("document.querySelector('.sent').scrollIntoView()", Vec::new()).await?;
        browser.shoot(&format!("desk-sent-{}", screen.width)).await?;
    }
    Ok(())
}

/// The box with the focus is emptied at once, on a desk where nothing else happens.
pub(crate) async fn what_opened_by_itself_leaves_an_empty_box(browser: &mut Browser) -> Result<()> {
    open(browser).await?;
    paste(browser, &link(&typical())?).await?;
    let left = browser.value("document.getElementById('paste').value").await?;
    ensure!(left == "", "{left}");
    browser.find("#sent-0").await?;
    browser.tap(".open button[type=submit]").await?;
    browser.until("document.activeElement.id === 'sent-0'").await?;
    let told = browser.text("#paste-trouble").await?;
    ensure!(told.is_empty(), "{told}");
    // What is being typed stays as it is typed.
    browser.tap("#paste").await?;
    browser.type_keys("see you on Friday").await?;
    let typed = browser.value("document.getElementById('paste').value").await?;
    ensure!(typed == "see you on Friday", "{typed}");
    Ok(())
}

/// Who orders there learns of the dealer's own limits while the caller is on the line.
pub(crate) async fn by_a_dealers_rules(browser: &mut Browser) -> Result<()> {
    let reason = "our widest panel covers a 96 in opening";
    let told = |css: &str, what: &str| {
        let said = format!("document.querySelector({})?.innerText", json!(css));
        format!("{said}.replaceAll('\u{a0}', ' ').includes({})", json!(what))
    };
    browser.serve(crate::embed::demo()?).await?;
    let address = "/desk.html?profile=/demo/profiles/prairie.json";
    browser.open(Screen::DESK, address).await?;
    browser.until(&told("#app[data-ready] #rules", "Prairie Door Works")).await?;
    say(browser, ["97", "101 1/2", "9 1/2", "1 1/4"]).await?;
    browser.until(&told("#main", reason)).await?;
    no_sideways(browser, "the desk by a profile").await?;
    browser.shoot("desk-by-profile").await?;
    browser.set_screen(Screen::PHONE).await?;
    no_sideways(browser, "the desk by a profile on a phone").await?;
    browser.shoot("desk-by-profile-phone").await?;
    // What is kept there is of those rules, and so is the page that its link leads to.
    browser.tap("[data-act=keep]").await?;
    let link = browser.until("document.querySelector('.paper a')?.href").await?;
    let link = link.as_str().context("the sheet has its link")?.to_owned();
    let page =
        format!("{}/dealer.html?profile=/demo/profiles/prairie.json#", browser.server.origin());
    let payload = link.strip_prefix(&page).with_context(|| format!("{link} begins with {page}"))?;
    let order = hangtrue_link::decode(payload).map_err(|error| anyhow::anyhow!("{error:?}"))?;
    ensure!(order.profile == Some(("Prairie Door Works".to_owned(), 4)), "{:?}", order.profile);
    has_its_rules_kept(browser).await?;
    browser.goto(link.strip_prefix(&browser.server.origin()).context("of this origin")?).await?;
    browser.find("main.step-opened").await?;
    browser.until(&told("#main", reason)).await?;
    with_its_rules_is_kept(browser).await?;
    // Rules of another origin are not asked for, and the built-in ones hold.
    browser.goto("/desk.html?profile=https://elsewhere.example/p.json").await?;
    browser.until(&told("#app[data-ready] #rules", "origin")).await?;
    say(browser, ["97", "101 1/2", "9 1/2", "1 1/4"]).await?;
    ensure!(browser.value(&told("#main", reason)).await? == false, "nobody's rules");
    browser.shoot("desk-rules-unread-phone").await?;
    Ok(())
}

pub(crate) async fn thirty_characters_and_a_damaged_link(browser: &mut Browser) -> Result<()> {
    open(browser).await?;
    let whole = link(&typical())?;
    paste(browser, &whole[..whole.len() - 3]).await?;
    browser.tap(".open button[type=submit]").await?;
    let told = browser.text("#paste-trouble").await?;
    ensure!(told.contains("damaged") && told.contains("Ask the sender"), "{told}");
    ensure!(browser.value("document.activeElement.id").await? == "paste");
    browser.shoot("desk-damaged-1280").await?;

    let thirty = spaced(&small(&to_be_built()).context("a small order")?);
    let misheard = format!("{}{}", if thirty.starts_with('7') { "8" } else { "7" }, &thirty[1..]);
    paste(browser, &misheard).await?;
    browser.find("#sent-0").await?;
    let shown = browser.text(".order").await?;
    ensure!(shown.contains("put right (number 1)"), "{shown}");
    ensure!(shown.contains("92 3/16 in"), "{shown}");
    Ok(())
}

pub(crate) async fn the_six_characters_name_the_number(browser: &mut Browser) -> Result<()> {
    open(browser).await?;
    let order = typical();
    let report = check(&order.survey, &Profile::default());
    let letters = characters(&Said::of(&report, order.survey.unit)).context("characters")?;
    let words = spell(&letters, Language::English).join(" ");
    say(browser, ["92 3/16", "101 1/2", "5 1/2", "1 1/4"]).await?;
    browser.tap("#heard").await?;
    browser.type_keys(&words).await?;
    browser.until("document.querySelector('.misheard')").await?;
    let told = browser.text(".misheard").await?;
    ensure!(told.contains("Header depth was probably misheard"), "{told}");
    let typed = "document.getElementById('header.center').value";
    ensure!(browser.value(typed).await? == "5 1/2", "never changed by itself");
    browser.run("document.querySelector('.voice').scrollIntoView()", Vec::new()).await?;
    browser.shoot("desk-misheard-1280").await?;
    browser.tap(".misheard button").await?;
    ensure!(browser.value(typed).await? == "9 1/2 in");
    ensure!(browser.text("#heard-says").await?.contains("agree"));
    browser.set_screen(Screen::PHONE).await?;
    no_sideways(browser, "the six characters").await?;
    browser.run("document.querySelector('.voice').scrollIntoView()", Vec::new()).await?;
    browser.shoot("desk-misheard-360").await
}

pub(crate) async fn two_orders_for_one_truck(browser: &mut Browser) -> Result<()> {
    open(browser).await?;
    let mut second = typical();
    second.survey.set(hangtrue_core::Spot::WidthLow, 0, "93 1/4");
    paste(browser, &link(&typical())?).await?;
    browser.find("#sent-0").await?;
    paste(browser, &link(&second)?).await?;
    browser.find("#sent-1").await?;
    let first = browser.text(".compare tbody tr").await?;
    for piece in ["low", "92 1/4 in", "93 1/4 in", "−1 in", "one-inch mark"] {
        ensure!(first.contains(piece), "{piece} is not in {first}");
    }
    browser.run("document.querySelector('.compare').scrollIntoView()", Vec::new()).await?;
    browser.shoot("desk-two-orders-1280").await?;
    browser.tap("[data-act='close:0']").await?;
    browser.until("!document.querySelector('#sent-1')").await?;
    ensure!(browser.text("#sent-0").await?.contains("Unit 7"));
    browser.set_screen(Screen::PHONE).await?;
    no_sideways(browser, "an order").await
}
