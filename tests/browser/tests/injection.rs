//! Texts from strangers that try to be more than text: in links, files, tables, profiles and
//! drafts. Nothing of them runs, and every character is shown. That the policy had to refuse
//! nothing is what holds at the end of every scenario: the console is empty.

use anyhow::{Result, ensure};
use hangtrue_browser::{Browser, Screen, root};
use hangtrue_core::Spot;
use hangtrue_core::hang::care::{Service, Work};
use hangtrue_core::hang::record::{Place, Record};
use hangtrue_core::order::{Date, Order};
use hangtrue_link::record;
use serde_json::json;

use crate::desk::open as open_desk;
use crate::desk_many::drop_file;
use crate::desk_sent::paste;
use crate::embed::demo;
use crate::offline::with_its_rules_is_kept;
use crate::orders::{open, payload, typical};
use crate::paper::printed;
use crate::walk::{at, leave_out_the_rest, spaced};

/// What is tried: `ran` is the canary.
const HOSTILE: [&str; 44] = [
    "<script>ran=1</script>",
    "</script><script>ran=1</script>",
    "<ScRiPt src=data:text/javascript,ran=1></sCrIpT>",
    "<img src=x onerror=ran=1>",
    "<img/src='x'/onerror='ran=1'//",
    "\"><img src=x onerror=ran=1>",
    "'><img src=x onerror=ran=1>",
    "\" autofocus onfocus=ran=1 x=\"",
    "' onmouseover='ran=1",
    "<body onload=ran=1>",
    "<details open ontoggle=ran=1>",
    "<input autofocus onfocus=ran=1>",
    "<iframe src=javascript:parent.ran=1></iframe>",
    "<iframe srcdoc='<script>parent.ran=1</script>'>",
    "<object data=javascript:ran=1>",
    "<embed src=javascript:ran=1>",
    "<a href=javascript:ran=1>go</a>",
    "javascript:ran=1",
    "JaVaScRiPt:ran=1//",
    "data:text/html,<script>ran=1</script>",
    "<svg onload=ran=1>",
    "<svg><script>ran=1</script></svg>",
    "<svg><animate onbegin=ran=1 attributeName=x>",
    "<svg><foreignObject><img src=x onerror=ran=1></foreignObject></svg>",
    "<math><mtext><img src=x onerror=ran=1></mtext></math>",
    "<math href=javascript:ran=1>x</math>",
    "<template><script>ran=1</script></template>",
    "</template></title></textarea></style><img src=x onerror=ran=1>",
    "<style>*{background:url(javascript:ran=1)}</style>",
    "<link rel=stylesheet href=data:,*{display:none}>",
    "<base href=//elsewhere.example/>",
    "<meta http-equiv=refresh content=0;url=javascript:ran=1>",
    "<form action=javascript:ran=1><button>go</button></form>",
    "&lt;script&gt;ran=1&lt;/script&gt; &#60;img&#62; &amp;amp;",
    "<!-- --!><img src=x onerror=ran=1> <![CDATA[ <?php",
    "<p title=\"unclosed",
    "{{constructor('ran=1')()}} ${ran=1} <%= ran=1 %>",
    "=cmd|'/c calc'!A1",
    "@SUM(1+1)*cmd",
    "\u{202e}gnp.exe\u{202c} \u{2066}a\u{2069}",
    "zero\u{200b}width\u{200d}join\u{feff}er",
    "__proto__.constructor",
    "nought\0byte",
    "../../../../etc/passwd; DROP TABLE orders;--",
];

/// Letters that nobody sees: rules for others are not read with them.
const UNSEEN: [char; 8] =
    ['\u{202e}', '\u{202c}', '\u{2066}', '\u{2069}', '\u{200b}', '\u{200d}', '\u{feff}', '\0'];

/// The others, by three.
pub(crate) fn plain() -> Vec<[&'static str; 3]> {
    let mut plain = HOSTILE.into_iter().filter(|text| !text.contains(UNSEEN)).fuse();
    let next = || {
        plain
            .next()
            .map(|first| [first, plain.next().unwrap_or("end"), plain.next().unwrap_or("end")])
    };
    std::iter::from_fn(next).collect()
}

/// Every text that is lacking on the screen, or in the element that is on it, what has run, what
/// could, and what is too wide.
const LOOK: &str = "
    const root = document.querySelector('hangtrue-survey')?.shadowRoot ?? document.body;
    const values = [...root.querySelectorAll('input, textarea')].map(one => one.value);
    const plain = text => text.replace(/\\u2068|\\u2069/g, '').replaceAll('\\u00a0', ' ');
    const shown = plain([root.textContent, ...values].join('\\n'));
    const lacking = arguments[0].filter(text => !shown.includes(plain(text)));
    const app = [...root.querySelectorAll('#app *')];
    const armed = app.filter(one =>
        ['script', 'iframe', 'object', 'embed', 'img', 'style', 'base', 'meta', 'link', 'math', 'animate', 'foreignObject', 'template']
            .includes(one.localName)
        || [...one.attributes].some(({ name }) => name.startsWith('on'))
        || one.localName === 'a' && !/^(https?:|mailto:|sms:|tel:|blob:|data:application\\/json,)/.test(one.href));
    const { scrollWidth, clientWidth } = document.documentElement;
    const wide = scrollWidth > clientWidth
        ? app.filter(one => one.getBoundingClientRect().right > clientWidth) : [];
    const told = all => all.map(one => one.outerHTML.slice(0, 200));
    return [window.ran ?? null, told(armed), lacking, told(wide)]";

/// Nothing runs, all of `texts` is on the screen, and nothing is as wide as to move the page.
pub(crate) async fn holds(browser: &Browser, place: &str, texts: &[&str]) -> Result<()> {
    let found = browser.run(LOOK, vec![json!(texts)]).await?;
    ensure!(found == json!([null, [], [], []]), "{place}: ran, armed, lacking, wide: {found}");
    Ok(())
}

/// An order with hostile texts in all its places.
fn order(texts: &[&str]) -> Order {
    let mut order = typical();
    let mut texts = texts.iter().copied();
    let mut next = || texts.next().unwrap_or("end").to_owned();
    order.vehicle = next();
    order.contact = next();
    order.survey.add(Spot::WidthHigh, &next());
    order.survey.add(Spot::BowSecond, &next());
    order.note = texts.collect::<Vec<_>>().join(" | ");
    order
}

/// A door's record with hostile texts in its own places.
fn record(texts: &[&str]) -> Record {
    let text = |at: usize| texts.get(at).copied().unwrap_or("end");
    let mut record = Record { order: typical(), serial: text(0).to_owned(), ..Record::default() };
    record.order.vehicle = text(1).to_owned();
    let date = Date { year: 2026, month: 3, day: 2 };
    let note = text(2).to_owned();
    record.services.push(Service { date, work: Work::Lubrication, note });
    record.built.set(Place::TrackLow, text(3));
    record
}

/// By a link, opened; taken over as the draft, on every screen and on paper; and come back to.
pub(crate) async fn in_a_link_and_a_draft(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/").await?;
    browser.find("#app[data-ready]").await?;
    for (turn, texts) in HOSTILE.chunks(7).enumerate() {
        open(browser, &order(texts)).await?;
        holds(browser, "opened", texts).await?;
        let paper = browser.value("document.querySelector('.paper').textContent").await?;
        let paper = spaced(paper.as_str().unwrap_or_default());
        // What was typed for a reading is on the screen; on paper stand the readings.
        let printed = texts.iter().enumerate().filter(|(at, _)| !matches!(at, 2 | 3));
        for (_, text) in printed {
            ensure!(paper.contains(&spaced(text)), "not on paper: {text}");
        }
        if turn > 0 {
            continue;
        }
        browser.shoot("hostile-opened").await?;
        browser.tap("form [type=submit]").await?;
        at(browser, "check").await?;
        for step in ["start", "frame", "width", "height", "header", "bow", "check", "send", "voice"]
        {
            browser.run(&format!("location.hash = '#/{step}'"), Vec::new()).await?;
            at(browser, step).await?;
            holds(browser, step, &[]).await?;
        }
        browser.in_a_new_tab().await?;
        browser.goto("/").await?;
        browser.find("#app[data-ready]").await?;
        browser.goto("/#/drafts").await?;
        at(browser, "drafts").await?;
        holds(browser, "drafts", &texts[..1]).await?;
    }
    Ok(())
}

/// At the desk: a link pasted, files dropped, a table of many.
pub(crate) async fn at_the_desk(browser: &mut Browser) -> Result<()> {
    open_desk(browser).await?;
    for texts in HOSTILE.chunks(14) {
        let order = order(texts);
        paste(browser, &crate::desk_files::link(&order)?).await?;
        browser.find("#sent-0").await?;
        holds(browser, "pasted", texts).await?;
        browser.tap("[data-act='close:0']").await?;
        browser.until("!document.querySelector('.order')").await?;
        drop_file(browser, "order.json", &crate::desk_files::json_file(&order)).await?;
        browser.find("#sent-0").await?;
        holds(browser, "dropped", texts).await?;
        browser.tap("[data-act='close:0']").await?;
        browser.until("!document.querySelector('.order')").await?;
    }
    let mut table = String::from("id,truck,width,height,header,bow\r\n");
    for text in HOSTILE {
        let cell = text.replace('"', "\"\"");
        table += &format!("\"{cell}\",\"{cell}\",\"{cell}\",101 1/2,9 1/2,1 1/4\r\n");
    }
    browser.tap("[data-act=many]").await?;
    drop_file(browser, "<img src=x onerror=ran=1>.csv", &table).await?;
    browser.find("#list-check").await?;
    holds(browser, "columns", &[]).await?;
    browser.tap("#list-check").await?;
    browser
        .until("document.querySelector('table.found') && !document.querySelector('[aria-busy]')")
        .await?;
    browser.shoot("hostile-many").await?;
    holds(browser, "many", &HOSTILE).await
}

/// A dealer's file: its name, doors, questions and texts.
pub(crate) async fn in_a_profile(browser: &mut Browser) -> Result<()> {
    let prairie = std::fs::read_to_string(root().join("demo/profiles/prairie.json"))?;
    let (unseen, plain): (Vec<&str>, Vec<&str>) =
        HOSTILE.into_iter().partition(|text| text.contains(UNSEEN));
    for texts in plain.chunks(6) {
        let text = |at: usize| *texts.get(at).unwrap_or(&"end");
        let mut profile: serde_json::Value = serde_json::from_str(&prairie)?;
        profile["name"] = json!(text(0));
        profile["doors"][0]["name"] = json!(text(1));
        profile["doors"][0]["note"] = json!(text(2));
        profile["questions"][1]["ask"] = json!(text(3));
        profile["questions"][1]["hint"] = json!(text(4));
        profile["texts"]["start"] = json!(text(5));
        browser.serve(demo()?.text("/hostile.json", &profile.to_string())).await?;
        browser.open(Screen::PHONE, "/dealer.html?profile=/hostile.json").await?;
        browser.find("#app[data-ready]").await?;
        browser.until("document.querySelector('#rules')").await?;
        holds(browser, "start by a profile", &[text(0), text(5)]).await?;
        browser.tap("button[type=submit]").await?;
        browser.find("main.step-frame .doors").await?;
        holds(browser, "frame by a profile", &[text(1), text(2)]).await?;
        browser.goto("/dealer.html?profile=/hostile.json#/questions").await?;
        at(browser, "questions").await?;
        holds(browser, "questions by a profile", &[text(3), text(4)]).await?;
        with_its_rules_is_kept(browser).await?;
    }
    ensure!(unseen.len() == 3, "{unseen:?}");
    for text in unseen {
        let mut profile: serde_json::Value = serde_json::from_str(&prairie)?;
        profile["doors"][0]["name"] = json!(text);
        browser.serve(demo()?.text("/hostile.json", &profile.to_string())).await?;
        browser.open(Screen::PHONE, "/dealer.html?profile=/hostile.json").await?;
        browser.find("#app[data-ready]").await?;
        let told = browser.value("document.querySelector('#rules')?.textContent").await?;
        let told = told.as_str().unwrap_or_default();
        ensure!(told.contains("doors.0.name") && told.contains("U+"), "{text:?}: {told:?}");
        holds(browser, "an unseen letter", &[]).await?;
        with_its_rules_is_kept(browser).await?;
    }
    Ok(())
}

/// The dealer's texts where they come later: at a finding, on paper, over the walk to its end.
pub(crate) async fn in_a_profile_on_every_screen(browser: &mut Browser) -> Result<()> {
    let prairie = std::fs::read_to_string(root().join("demo/profiles/prairie.json"))?;
    for (turn, texts) in plain().into_iter().enumerate() {
        let mut order = Order { profile: Some((texts[0].to_owned(), 4)), ..typical() };
        let sound = payload(&order)?;
        order.survey.add(Spot::WidthHigh, "97 1/4");
        let wide = payload(&order)?;
        let mut profile: serde_json::Value = serde_json::from_str(&prairie)?;
        profile["name"] = json!(texts[0]);
        profile["limits"]["width"]["reason"] = json!(texts[1]);
        profile["texts"]["send"] = json!(texts[2]);
        // What asks for more would stand before the end.
        for asks in ["questions", "doors", "closing"] {
            profile[asks] = json!([]);
        }
        for (order, step, shown) in [(&wide, "check", texts[1]), (&sound, "send", texts[2])] {
            // At an origin of its own: where a draft is open it is asked first.
            browser.serve(demo()?.text("/hostile.json", &profile.to_string())).await?;
            browser.set_screen(Screen::PHONE).await?;
            browser.goto(&format!("/dealer.html?{step}&profile=/hostile.json#{order}")).await?;
            browser.find("main.step-opened").await?;
            // A longer name is cut there, before a mark for it.
            let name: String = texts[0].chars().take(24).collect();
            let name = name.trim_end();
            let paper = browser.value("document.querySelector('.paper').textContent").await?;
            let paper = spaced(paper.as_str().unwrap_or_default());
            ensure!(paper.contains(&spaced(name)), "{name}: {paper}");
            holds(browser, "opened by a profile", &[]).await?;
            browser.tap("form [type=submit]").await?;
            if step == "send" {
                leave_out_the_rest(browser).await?;
                browser.tap("form [type=submit]").await?;
            }
            at(browser, step).await?;
            holds(browser, step, &[shown]).await?;
            with_its_rules_is_kept(browser).await?;
        }
        for step in ["frame", "width", "height", "header", "bow", "voice"] {
            if turn == 0 {
                browser.run(&format!("location.hash = '#/{step}'"), Vec::new()).await?;
                at(browser, step).await?;
                holds(browser, step, &[]).await?;
            }
        }
    }
    Ok(())
}

/// What the printer gets, read from its file.
pub(crate) async fn on_real_paper(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/").await?;
    browser.find("#app[data-ready]").await?;
    for texts in plain() {
        let [vehicle, contact, note] = [texts[0], texts[1], &texts.join(" | ")].map(str::to_owned);
        open(browser, &Order { vehicle, contact, note, ..typical() }).await?;
        for sheet in printed(browser, "hostile").await? {
            // A line is broken anywhere, where a word is longer.
            let letters = |text: &str| text.split_whitespace().collect::<String>();
            let all = letters(&sheet.text);
            for text in texts {
                ensure!(all.contains(&letters(text)), "{text} is not on {}:\n{all}", sheet.name);
            }
        }
    }
    Ok(())
}

/// The hanging page, by an order's link.
pub(crate) async fn where_the_door_is_hung(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/hang.html").await?;
    browser.find("#app[data-ready]").await?;
    for (turn, texts) in HOSTILE.chunks(10).enumerate() {
        let payload = payload(&order(texts))?;
        browser.goto(&format!("/hang.html?{turn}#{payload}")).await?;
        browser.find("#app[data-ready] main.hang-order").await?;
        holds(browser, "hung", &texts[..1]).await?;
    }
    for (turn, texts) in HOSTILE.chunks(4).enumerate() {
        let payload = record::encode(&record(texts)).map_err(|e| anyhow::anyhow!("{e:?}"))?;
        browser.goto(&format!("/hang.html?record{turn}#{payload}")).await?;
        // Who opens a door's record sees first what is due.
        browser.find("#app[data-ready] main.hang-care").await?;
        for (step, shown) in
            [("care", &texts[..3]), ("record", &texts[..1]), ("tracks", &texts[3..])]
        {
            browser.run(&format!("location.hash = '#/{step}'"), Vec::new()).await?;
            browser.find(&format!("main.hang-{step}")).await?;
            holds(browser, step, shown).await?;
        }
    }
    Ok(())
}
