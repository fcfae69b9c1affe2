//! The three demo orders at the desk by every way in and out: whatever one comes as, it is shown
//! the same.

use crate::desk::open;
use crate::desk_files::{choose, downloaded, folder, json_file, link, picture, write_png};
use crate::desk_sent::{paste, say};
use anyhow::{Context as _, Result, ensure};
use hangtrue_browser::{Browser, Screen};
use hangtrue_core::check;
use hangtrue_core::order::Order;
use hangtrue_core::profile::Profile;
use hangtrue_core::say::Language;
use hangtrue_link::code::{Said, characters, small, spell};
use serde_json::{Value, json};

const LINKS: &str = include_str!("../../../demo/orders/links.txt");

fn demo() -> Result<Vec<Order>> {
    let orders = LINKS.lines().map(|message| {
        let payload = hangtrue_link::find(message).ok().context("a payload")?;
        hangtrue_link::decode(&payload).ok().context("an order")
    });
    orders.collect()
}

/// What the order that was opened is shown as, but for what it is called, then closes it.
async fn shown(browser: &Browser) -> Result<Value> {
    browser.find("#sent-0").await?;
    let shown = "[...document.querySelector('.order').children].slice(1).map(it => it.innerText)";
    let shown = browser.value(shown).await?;
    browser.tap("[data-act='close:0']").await?;
    browser.until("!document.querySelector('.order')").await?;
    Ok(shown)
}

/// The numbers of the order, as the desk puts them.
async fn numbers(browser: &Browser) -> Result<Value> {
    browser.find("#sent-0").await?;
    browser
        .value("[...document.querySelectorAll('.order .numbers .value')].map(it => it.innerText)")
        .await
}

/// Pastes files as a screen's picture or a folder's file is pasted; `data` in Base64.
const PASTE: &str = "
    const [name, type, data] = arguments;
    const bytes = Uint8Array.from(atob(data), letter => letter.charCodeAt(0));
    const pasted = new DataTransfer();
    pasted.items.add(new File([bytes], name, { type }));
    const event = new ClipboardEvent('paste', { bubbles: true, cancelable: true });
    Object.defineProperty(event, 'clipboardData', { value: pasted });
    document.activeElement.dispatchEvent(event);";

async fn paste_file(browser: &Browser, name: &str, media: &str, bytes: &[u8]) -> Result<()> {
    // By the page's own: no crate for one line.
    let text: String = bytes.iter().map(|byte| char::from(*byte)).collect();
    let data = browser.run("return btoa(arguments[0])", vec![json!(text)]).await?;
    browser.run(PASTE, vec![json!(name), json!(media), data]).await?;
    Ok(())
}

pub(crate) async fn the_demo_orders_by_every_way(browser: &mut Browser) -> Result<()> {
    let orders = demo()?;
    ensure!(orders.len() == 3, "{} orders", orders.len());
    for (at, order) in orders.iter().enumerate() {
        let link = link(order)?;
        let payload = link.split_once('#').context("a payload")?.1;
        // The desk's own address with the order behind it, on a page load of its own.
        browser.open(Screen::DESK, &format!("/desk.html?{at}#{payload}")).await?;
        browser.find("#sent-0").await?;
        let four = numbers(browser).await?;
        let expected = shown(browser).await?;
        ensure!(expected.as_array().is_some_and(|pieces| pieces.len() > 3), "{expected}");

        // In a mail; pasted as a text; as a saved order.
        for text in
            [format!("> Hello,\n> {link}.\n> Bye"), payload.to_lowercase(), json_file(order)]
        {
            paste(browser, &text).await?;
            if browser.value("!document.querySelector('#sent-0')").await? == true {
                browser.tap(".open button[type=submit]").await?;
            }
            let shown = shown(browser).await?;
            ensure!(shown == expected, "{text}:\n{shown:#}\ninstead of\n{expected:#}");
        }

        // As files: chosen, and pasted.
        let folder = folder(browser).await?;
        let size = (900, 900);
        let code = folder.path().join("code.png");
        write_png(&code, &picture(&link, 7, size)?, size)?;
        let order_file = folder.path().join("order.json");
        std::fs::write(&order_file, json_file(order))?;
        for (file, media) in [(&code, "image/png"), (&order_file, "application/json")] {
            choose(browser, &[file]).await?;
            ensure!(shown(browser).await? == expected, "{} chosen", file.display());
            paste_file(browser, "pasted", media, &std::fs::read(file)?).await?;
            ensure!(shown(browser).await? == expected, "{} pasted", file.display());
        }

        // Out of the desk as each file, and in again; and onto paper.
        paste(browser, &link).await?;
        browser.find("#sent-0").await?;
        let printed = browser.value("document.querySelector('.paper-code a').href").await?;
        let printed = hangtrue_link::find(printed.as_str().context("a link")?);
        ensure!(printed.is_ok_and(|printed| printed == payload), "the sheet has another order");
        let mut saved = Vec::new();
        for format in ["json", "csv", "txt"] {
            browser.tap(&format!("[data-act='save:0:{format}']")).await?;
            let name = browser.until("window.named").await?;
            let name = name.as_str().context("a name")?;
            ensure!(name.ends_with(format), "{name} is no .{format}");
            downloaded(browser, folder.path(), name).await?;
            saved.push(folder.path().join(name));
            browser.run("window.named = ''", Vec::new()).await?;
        }
        shown(browser).await?;
        for file in saved {
            choose(browser, &[&file]).await?;
            let shown = shown(browser).await?;
            ensure!(shown == expected, "{}:\n{shown:#}\n{expected:#}", file.display());
        }

        // Thirty characters hold the four numbers.
        paste(browser, &small(order).context("thirty characters")?).await?;
        ensure!(numbers(browser).await? == four, "thirty characters");
        shown(browser).await?;
    }
    Ok(())
}

pub(crate) async fn the_demo_orders_by_voice(browser: &mut Browser) -> Result<()> {
    for order in demo()? {
        open(browser).await?;
        let unit = order.survey.unit;
        let report = check(&order.survey, &Profile::default());
        let said = Said::of(&report, unit);
        let letters = characters(&said).context("characters")?;
        let words = spell(&letters, Language::English).join(" ");
        // As the caller's page says them: the numbers of the order, then the six characters.
        paste(browser, &link(&order)?).await?;
        let four = numbers(browser).await?;
        let four: Vec<&str> =
            four.as_array().into_iter().flatten().filter_map(Value::as_str).collect();
        let [width, height, header, bow] = four[..] else { anyhow::bail!("{four:?}") };
        browser.tap("[data-act='close:0']").await?;
        browser.tap(&format!("input[name=unit][value={}]", unit.key())).await?;
        let built = if said.build { "yes" } else { "no" };
        browser.tap(&format!("input[name=built][value={built}]")).await?;
        say(browser, [width, height, header, bow]).await?;
        browser.tap("#heard").await?;
        browser.type_keys(&words).await?;
        let told = browser.text("#heard-says").await?;
        ensure!(told.contains("agree"), "{four:?} {words}: {told}");
    }
    Ok(())
}
