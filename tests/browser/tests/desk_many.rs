//! At the desk: many orders at once.

use std::fmt::Write as _;
use std::time::{Duration, Instant};

use crate::desk::open;
use crate::desk_files::{choose, downloaded, folder};
use anyhow::{Context as _, Result, ensure};
use hangtrue_browser::{Browser, Screen};
use serde_json::{Value, json};

/// Invented orders: clear, stopped, not an order, with a slip, and by metric tape.
pub(crate) const LIST: &str = "Order #,Truck,Unit,Frame prepared,Width,Sill to header,Header depth,Bow,Second bow,Diagonal,Sill to bow\r\n\
    A-101,Unit 7,in,yes,92 3/16,101 1/2,9 1/2,1 1/4,1 1/4,137 1/8,109 3/4\r\n\
    A-102,Unit 8,in,yes,92 3/16,101 1/2,9 1/2,10,,,\r\n\
    A-103,Unit 9,in,yes,92 3/16,101 1/2\r\n\
    A-104,Unit 10,in,yes,87 5/16,96,9 3/4,1,1,129 3/4,103 13/16\r\n\
    A-105,Unit 11,mm,no,2286,2261,165,32,,,\r\n\
    A-106,=cmd(),in,yes,so wide,101 1/2,9 1/2,1 1/4,,,\r\n\
    A-107,Unit 13,in,yes,90,100,9,1 1/4,,,\r\n";

/// Rows enough to be kept busy by: four numbers each, some of them odd.
pub(crate) fn table(rows: usize) -> String {
    let mut text = String::from("id,truck,width,height,header,bow\n");
    for row in 0..rows {
        let (width, bow) = match row % 50 {
            7 => ("so wide", "1 1/4"),
            20 => ("92 3/16", "10"),
            _ => ("92 3/16", "1 1/4"),
        };
        let header = 9 + row % 4;
        let _ = writeln!(text, "T-{row},Unit {},{width},101 1/2,{header} 1/2,{bow}", row % 977);
    }
    text
}

/// A file of that name, dropped on the page.
pub(crate) async fn drop_file(browser: &Browser, name: &str, text: &str) -> Result<()> {
    hold_file(browser, name, text).await?;
    drop_held(browser).await
}

/// Gives the page a file to drop: that takes the driver its time, which is not the page's.
async fn hold_file(browser: &Browser, name: &str, text: &str) -> Result<()> {
    let hold = "window.held = new File([arguments[1]], arguments[0])";
    browser.run(hold, vec![json!(name), json!(text)]).await?;
    Ok(())
}

async fn drop_held(browser: &Browser) -> Result<()> {
    let drop = "const data = new DataTransfer();
        data.items.add(window.held);
        const drop = new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true });
        document.querySelector('h1').dispatchEvent(drop)";
    browser.run(drop, Vec::new()).await?;
    Ok(())
}

/// The texts of a column of the rows that are shown, once nothing is under way.
async fn column(browser: &Browser, number: usize) -> Result<Vec<String>> {
    browser
        .until("document.querySelector('table.found') && !document.querySelector('[aria-busy]')")
        .await?;
    let texts = format!(
        "[...document.querySelectorAll('table.found tbody tr')]
             .map(row => row.children[{number}].textContent.split(',')[0])"
    );
    let texts = browser.value(&texts).await?;
    let texts = texts.as_array().context("no rows")?;
    Ok(texts.iter().filter_map(Value::as_str).map(str::to_owned).collect())
}

async fn names(browser: &Browser) -> Result<Vec<String>> {
    column(browser, 1).await
}

async fn choose_in(browser: &Browser, name: &str, value: &str) -> Result<()> {
    let choose = "const list = document.getElementsByName(arguments[0])[0];
        list.value = arguments[1];
        list.dispatchEvent(new Event('input', { bubbles: true }))";
    browser.run(choose, vec![json!(name), json!(value)]).await?;
    Ok(())
}

pub(crate) async fn dropped_mapped_checked_and_saved(browser: &mut Browser) -> Result<()> {
    open(browser).await?;
    let folder = folder(browser).await?;
    // A call is under way when the list comes.
    browser.tap("[id='width.middle']").await?;
    browser.type_keys("92").await?;
    drop_file(browser, "friday.csv", &LIST.replace("Second bow", "Rear steel")).await?;
    browser.until("document.activeElement.id === 'list-check'").await?;
    let holds = |name: &str| format!("document.getElementsByName('{name}')[0].value");
    ensure!(browser.value(&holds("column:4")).await? == "width.middle");
    ensure!(browser.value(&holds("column:8")).await? == "ignored");
    browser.shoot("many-columns-1280").await?;
    choose_in(browser, "column:8", "bow.second").await?;
    ensure!(browser.value(&holds("column:8")).await? == "bow.second");
    browser.tap("#list-check").await?;

    ensure!(column(browser, 2).await?[..3] == ["Stop", "Stop", "Not an order"]);
    ensure!(names(browser).await?.len() == 7);
    browser.shoot("many-found-1280").await?;
    browser.tap("[data-act='list-sort:width']").await?;
    ensure!(names(browser).await?[..3] == ["A-104", "A-105", "A-107"]);
    browser.tap("[data-act='list-sort:width']").await?;
    ensure!(names(browser).await?[..3] == ["A-101", "A-102", "A-105"]);
    ensure!(
        browser
            .value("document.querySelector('th[aria-sort=descending]').innerText")
            .await?
            .as_str()
            .is_some_and(|head| head.starts_with("Width"))
    );
    browser.tap("[data-act='list-verdict:stop']").await?;
    ensure!(names(browser).await?.len() == 2);
    browser.tap("[data-act='list-rule:bow-fills-header']").await?;
    ensure!(names(browser).await? == ["A-102"]);
    browser.tap("[data-act='list-rule:bow-fills-header']").await?;
    browser.tap("[data-act='list-verdict:all']").await?;
    browser.tap("#list-filter").await?;
    browser.type_keys("unit 1").await?;
    browser.until("document.querySelectorAll('table.found tbody tr').length === 3").await?;
    browser.until("document.getElementById('spoken').innerText === '3 orders shown'").await?;

    browser.tap("[data-act='list-save:csv']").await?;
    let csv = downloaded(browser, folder.path(), "orders-checked.csv").await?;
    ensure!(csv.lines().count() == 4, "{csv}");
    browser.run("document.getElementById('list-filter').select()", Vec::new()).await?;
    browser.type_keys("cmd").await?;
    ensure!(names(browser).await? == ["A-106"]);
    browser.tap("[data-act='list-save:jsonl']").await?;
    let lines = downloaded(browser, folder.path(), "orders-checked.jsonl").await?;
    let line: Value = serde_json::from_str(&lines)?;
    ensure!(line["vehicle"] == "=cmd()" && line["verdict"] == "stop", "{lines}");
    browser.tap("[data-act='list-save:csv']").await?;
    browser.until("window.named === 'orders-checked.csv'").await?;
    let csv = downloaded(browser, folder.path(), "orders-checked.csv").await?;
    ensure!(csv.contains(",\"'=cmd()\","), "a formula leaves: {csv}");

    // One of them beside the call, which is as it was; then back to the list as it was.
    browser.tap("table.found tbody [data-act^='list-look']").await?;
    browser.find("#sent-0").await?;
    ensure!(browser.value("document.getElementById('width.middle').value").await? == "92");
    browser.tap("[data-act=many]").await?;
    ensure!(names(browser).await? == ["A-106"]);
    browser.tap("[data-act=list-close]").await?;
    browser.until("document.activeElement.id === 'orders'").await?;
    Ok(())
}

pub(crate) async fn pasted_and_chosen(browser: &mut Browser) -> Result<()> {
    open(browser).await?;
    let links = include_str!("../../../demo/orders/links.txt");
    let surveys = include_str!("../../../demo/orders/surveys.jsonl");
    browser.tap("[data-act=many]").await?;
    for text in [links, surveys] {
        browser
            .run(
                "document.getElementById('orders').focus();
                 document.execCommand('insertText', false, arguments[0])",
                vec![json!(text)],
            )
            .await?;
        let told = column(browser, 2).await?;
        ensure!(told == ["Recheck", "Clear", "Clear"], "{told:?} of {text}");
        browser.tap("[data-act=list-close]").await?;
        browser.find("#orders").await?;
    }
    let folder = tempfile::tempdir()?;
    let path = folder.path().join("orders.csv");
    std::fs::write(&path, include_str!("../../../demo/orders/orders.csv"))?;
    choose(browser, &[&path]).await?;
    browser.tap("#list-check").await?;
    ensure!(names(browser).await?[0] == "demo-2");
    browser.tap("[data-act=list-close]").await?;
    // A megabyte is not laid out in the box: it is taken as it comes.
    let paste = "const data = new DataTransfer();
        data.setData('text/plain', arguments[0]);
        const box = document.getElementById('orders');
        const paste = new ClipboardEvent('paste',
            // As the standard has it; and as Firefox has it.
            { clipboardData: data, dataType: 'text/plain', data: arguments[0],
              bubbles: true, cancelable: true });
        box.dispatchEvent(paste);
        return paste.defaultPrevented";
    ensure!(browser.run(paste, vec![json!(table(20_000))]).await? == true);
    browser.find("#list-check").await?;
    browser.tap("[data-act=list-close]").await?;
    browser.tap("#orders").await?;
    browser.type_keys("see you on Friday").await?;
    browser.tap(".open [type=submit]").await?;
    let told = browser.text("#orders-trouble .summary").await?;
    ensure!(told.starts_with("There is no list of orders in this."), "{told}");
    Ok(())
}

/// A script body: from now on, the times between two ticks of a timer, in ms.
const TICK: &str = "window.waits = [];
    let before = performance.now();
    const tick = () => {
        const now = performance.now();
        window.waits.push(now - before);
        before = now;
        setTimeout(tick);
    };
    tick()";

/// The time from which a person feels that a page waits, in ms.
const ANSWERS: f64 = 100.0;

/// How long the page did not answer while it worked, in ms.
pub(crate) struct Waits {
    /// Of ten waits nine were shorter.
    nine_of_ten: f64,
    longest: f64,
    whole: f64,
}

/// Checks a table of so many rows, sorts, filters and writes it.
pub(crate) async fn works_through(browser: &Browser, rows: usize) -> Result<Waits> {
    let folder = folder(browser).await?;
    hold_file(browser, "many.csv", &table(rows)).await?;
    browser.run(TICK, Vec::new()).await?;
    drop_held(browser).await?;
    browser.find("#list-check").await?;
    let start = Instant::now();
    browser.tap("#list-check").await?;
    browser.until("document.querySelector('.work progress')").await?;
    let done = "document.querySelector('table.found tbody tr') !== null";
    while browser.value(done).await? != true {
        ensure!(start.elapsed() < Duration::from_secs(600), "not done");
        tokio::time::sleep(Duration::from_millis(200)).await;
    }
    let took = start.elapsed();
    ensure!(browser.value("document.querySelectorAll('table.found tbody tr').length").await? == 50);
    browser.tap("[data-act='list-sort:id']").await?;
    column(browser, 1).await?;
    browser.tap("#list-filter").await?;
    browser.type_keys("t-1").await?;
    column(browser, 1).await?;
    browser.tap("[data-act='list-save:csv']").await?;
    let saved = downloaded(browser, folder.path(), "orders-checked.csv").await?;
    let of_them = (0..rows).filter(|row| row.to_string().starts_with('1')).count();
    ensure!(saved.lines().count() == of_them + 1, "{} lines", saved.lines().count());
    let waits = browser.value("window.waits").await?;
    let mut waits: Vec<f64> =
        waits.as_array().context("no ticks")?.iter().filter_map(Value::as_f64).collect();
    waits.sort_by(f64::total_cmp);
    let at = |share: usize| waits.get(waits.len() * share / 100).copied().unwrap_or(f64::NAN);
    let longest = waits.last().copied().unwrap_or(f64::NAN);
    eprintln!(
        "{rows} rows in {took:.1?}; the page did not answer for {:.0} ms (half of the times), {:.0} \
         (nine of ten), {:.0} (99 of 100), {longest:.0} (longest of {})",
        at(50),
        at(90),
        at(99),
        waits.len()
    );
    Ok(Waits { nine_of_ten: at(90), longest, whole: waits.iter().sum() })
}

/// A machine that others use keeps a page waiting too, now and then: the longest wait is told,
/// and held only to what work in one piece would exceed. `HANGTRUE_ROWS` sets how many there are.
pub(crate) async fn ten_thousand_keep_the_page_answering(browser: &mut Browser) -> Result<()> {
    open(browser).await?;
    let rows = std::env::var("HANGTRUE_ROWS").ok().and_then(|rows| rows.parse().ok());
    let Waits { nine_of_ten, longest, whole } =
        works_through(browser, rows.unwrap_or(10_000)).await?;
    ensure!(nine_of_ten < ANSWERS, "in one of ten waits {nine_of_ten} ms or more");
    ensure!(longest < whole / 10.0, "{longest} of {whole} ms without an answer");
    Ok(())
}

pub(crate) async fn it_stops_and_goes_on(browser: &mut Browser) -> Result<()> {
    open(browser).await?;
    drop_file(browser, "many.csv", &table(6_000)).await?;
    browser.tap("#list-check").await?;
    browser.until("document.querySelector('.work p')?.innerText.match(/^[1-9]/)").await?;
    browser.tap("[data-act=list-stop]").await?;
    let told = browser.text(".many .lede").await?;
    let count: usize = told.split(' ').next().unwrap_or_default().parse()?;
    ensure!(count < 6_000, "{told}");
    browser.shoot("many-stopped-1280").await?;
    browser.tap("[data-act=list-resume]").await?;
    // The other screen can be worked at meanwhile.
    browser.tap("[data-act=one]").await?;
    browser.tap("[id='width.middle']").await?;
    browser.type_keys("92 3/16").await?;
    ensure!(browser.text("[id='width.middle-echo']").await?.starts_with("92 3/16 in"));
    browser.tap("[data-act=many]").await?;
    browser
        .until("document.querySelector('.many .lede')?.innerText.startsWith('6000 orders')")
        .await?;
    Ok(())
}

pub(crate) async fn on_a_phone_too(browser: &mut Browser) -> Result<()> {
    open(browser).await?;
    browser.set_screen(Screen::PHONE).await?;
    drop_file(browser, "friday.csv", LIST).await?;
    browser.find("#list-check").await?;
    let overflow = "document.documentElement.scrollWidth > document.documentElement.clientWidth";
    ensure!(browser.value(overflow).await? == false, "the columns scroll the page sideways");
    browser.tap("#list-check").await?;
    ensure!(names(browser).await?.len() == 7);
    ensure!(browser.value(overflow).await? == false, "the table scrolls the page sideways");
    Ok(())
}
