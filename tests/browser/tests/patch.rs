//! The DOM patcher, on its own, in a page that holds Trusted Types.

use anyhow::{Result, ensure};
use fantoccini::key::Key;
use hangtrue_browser::{Browser, Screen, Site, folder_of_target};
use serde_json::{Value, json};

mod trees;

const HEAD: &str = "<!doctype html><meta charset=utf-8><title>t</title><link rel=icon href=data:,>";
const POLICY: &str =
    "<meta http-equiv=Content-Security-Policy content=\"require-trusted-types-for 'script'\">";

/// Opens a page with `body` in `<div id=root>` and `patch(markup)` to call.
async fn open(browser: &mut Browser, head: &str, body: &str) -> Result<()> {
    let page = format!(
        "{HEAD}{head}<div id=root>{body}</div><script type=module>
           import init, {{ patch }} from '/probe/patch.js';
           await init();
           window.root = document.getElementById('root');
           window.patch = (markup, at = root) => patch(at, markup);
         </script>"
    );
    let probe = folder_of_target("patch-probe")?;
    let site = Site::default().folder("/probe/", probe).text("/index.html", &page);
    browser.serve(site).await?;
    browser.open(Screen::DESK, "/").await?;
    browser.until("window.patch").await?;
    Ok(())
}

async fn patch(browser: &Browser, markup: &str) -> Result<()> {
    browser.run("patch(arguments[0])", vec![json!(markup)]).await?;
    Ok(())
}

/// Fails unless each expression is true in the page.
async fn holds(browser: &Browser, expressions: &[&str]) -> Result<()> {
    for expression in expressions {
        let value = browser.value(expression).await?;
        ensure!(value == true, "{expression} is {value}");
    }
    Ok(())
}

pub(crate) async fn any_tree_becomes_any_other(browser: &mut Browser) -> Result<()> {
    open(browser, "", "").await?;
    let markups: Vec<Value> = (0..400).map(|seed| json!(trees::markup(seed))).collect();
    let wrong = browser
        .run(
            "const parsed = document.createElement('template');
             return arguments[0].flatMap((markup, at, all) => {
                 patch(markup);
                 parsed.innerHTML = markup;
                 const same = root.isEqualNode(Object.assign(document.createElement('div'),
                     { id: 'root', innerHTML: markup }));
                 return same ? [] : [[all[at - 1], markup, root.innerHTML]];
             })",
            vec![Value::Array(markups)],
        )
        .await?;
    let wrong = wrong.as_array().cloned().unwrap_or_default();
    ensure!(wrong.is_empty(), "{} wrong; before, wanted, got: {:#?}", wrong.len(), wrong.first());
    Ok(())
}

pub(crate) async fn the_same_again_touches_nothing(browser: &mut Browser) -> Result<()> {
    // As the browser's parser made it: the first screen is in the HTML before the module runs.
    let markup = "<h1 id=\"t\">Width &amp; more</h1><svg viewBox=\"0 0 9 9\"><linearGradient id=\"g\">\
        </linearGradient><path d=\"M0 0\"></path></svg><form><label for=\"a\">A</label>\
        <input id=\"a\" value=\"96 1/4\" autocomplete=\"off\"><input type=\"checkbox\" checked>\
        <select><option>1</option><option selected>2</option></select>\
        <textarea>text</textarea><details open><summary>s</summary></details></form>";
    open(browser, POLICY, markup).await?;
    browser
        .run(
            "window.seen = [];
             new MutationObserver(records => seen.push(...records)).observe(root, { subtree: true, childList: true, attributes: true, characterData: true });",
            Vec::new(),
        )
        .await?;
    patch(browser, markup).await?;
    holds(browser, &["seen.length === 0"]).await?;
    patch(browser, &markup.replace("Width", "Height")).await?;
    let records =
        browser.value("seen.map(it => it.type + ' in ' + it.target.parentNode.localName)").await?;
    ensure!(records == json!(["characterData in h1"]), "{records}");
    Ok(())
}

pub(crate) async fn focus_and_selection_stay(browser: &mut Browser) -> Result<()> {
    open(browser, POLICY, "").await?;
    let field = |id: &str, more: &str| {
        format!(
            "<div><label for=\"{id}\">{id}</label>{more}<input id=\"{id}\" value=\"96 1/4\"></div>"
        )
    };
    let (a, b, c) = (field("a", ""), field("b", ""), field("c", ""));
    patch(browser, &format!("{a}{b}{c}")).await?;
    browser
        .run(
            "window.b = document.getElementById('b'); b.focus(); b.setSelectionRange(1, 4);
             window.blurs = 0; b.addEventListener('blur', () => blurs += 1);",
            Vec::new(),
        )
        .await?;
    let error = field("b", "<p id=\"b-error\">Enter the width</p>");
    for (what, markup) in [
        ("an error appears before it", format!("{a}{error}{c}")),
        ("and goes", format!("{a}{b}{c}")),
        (
            "a summary appears in front",
            format!("<div role=\"alert\"><a href=\"#b\">b</a></div>{a}{b}{c}"),
        ),
        ("and goes", format!("{a}{b}{c}")),
        ("the first field goes", format!("{b}{c}")),
        ("and comes back", format!("{a}{b}{c}")),
        ("they turn round", format!("{c}{b}{a}")),
        ("it becomes the first", format!("{b}{c}{a}")),
        ("it becomes the last", format!("{c}{a}{b}")),
        ("text comes between", format!("one {c} two {b} three")),
    ] {
        patch(browser, &markup).await?;
        let stays = browser
            .value("document.activeElement === b && b.isConnected && blurs === 0 && b.selectionStart === 1 && b.selectionEnd === 4")
            .await?;
        ensure!(stays == true, "lost when {what}");
    }
    Ok(())
}

pub(crate) async fn rows_with_keys_stay_themselves(browser: &mut Browser) -> Result<()> {
    open(browser, POLICY, "").await?;
    let rows = |keys: &[&str]| -> String {
        keys.iter().map(|key| format!("<li data-key=\"{key}\">{key}<input></li>")).collect()
    };
    patch(browser, &rows(&["a", "b", "c", "d"])).await?;
    browser
        .run(
            "window.rows = Object.fromEntries([...root.children].map(row => [row.dataset.key, row]));
             rows.c.lastChild.focus();",
            Vec::new(),
        )
        .await?;
    for keys in [&["d", "c", "b", "a"][..], &["c", "x", "a"], &["x", "c"], &["c"], &["y", "c", "z"]]
    {
        patch(browser, &rows(keys)).await?;
        let shown = browser
            .run(
                "return [...root.children].map(row => row.dataset.key).join() === arguments[0]
                     && root.querySelector('[data-key=c]') === rows.c
                     && document.activeElement === rows.c.lastChild",
                vec![json!(keys.join(","))],
            )
            .await?;
        ensure!(shown == true, "not {keys:?}");
    }
    Ok(())
}

pub(crate) async fn what_is_typed_stays(browser: &mut Browser) -> Result<()> {
    open(browser, POLICY, "").await?;
    let field =
        |value: &str, echo: &str| format!("<input id=\"a\" value=\"{value}\"><p>{echo}</p>");
    patch(browser, &field("", "")).await?;
    browser
        .run(
            "window.a = document.getElementById('a'); a.focus(); window.writes = 0;
             const { get, set } = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value');
             Object.defineProperty(a, 'value', { get, set(text) { window.writes += 1; set.call(a, text) } });",
            Vec::new(),
        )
        .await?;
    browser.type_keys("96 14").await?;
    patch(browser, &field("96 14", "echo")).await?;
    // Into the middle: what is patched must not move the caret.
    let left = char::from(Key::Left);
    browser.type_keys(&format!("{left}/")).await?;
    patch(browser, &field("96 1/4", "96 1/4 in")).await?;
    holds(browser, &["a.value === '96 1/4'", "a.selectionStart === 5", "writes === 0"]).await?;
    // A late echo, of what the field held a moment ago, is not written over what is typed since.
    browser.type_keys("1").await?;
    patch(browser, &field("96 1/4", "late")).await?;
    holds(browser, &["a.value === '96 1/14'", "writes === 0"]).await?;
    // The model changes its mind (a fraction key): that is written.
    patch(browser, &field("96 5/16", "")).await?;
    holds(browser, &["a.value === '96 5/16'", "writes === 1", "document.activeElement === a"])
        .await?;
    // Without the focus the field shows the model, whatever was left in it.
    browser
        .run("a.blur(); a.value = 'restored by the browser'; window.writes = 0", Vec::new())
        .await?;
    patch(browser, &field("96 5/16", "")).await?;
    holds(browser, &["a.value === '96 5/16'", "writes === 1"]).await
}

pub(crate) async fn a_composition_is_left_alone(browser: &mut Browser) -> Result<()> {
    open(browser, POLICY, "<input id=\"a\" value=\"\"><p></p>").await?;
    browser
        .run(
            "window.a = document.getElementById('a'); a.focus(); window.log = [];
             for (const kind of ['compositionstart', 'compositionend'])
                 a.addEventListener(kind, () => log.push(kind));
             a.addEventListener('input', () => patch(`<input id=\"a\" value=\"${a.value}\"><p>${a.value}</p>`));",
            Vec::new(),
        )
        .await?;
    for text in ["q", "qu", "qua"] {
        let composed =
            json!({ "text": text, "selectionStart": text.len(), "selectionEnd": text.len() });
        browser.devtools("Input.imeSetComposition", composed).await?;
    }
    holds(browser, &["a.value === 'qua'", "log.join() === 'compositionstart'"]).await?;
    browser.devtools("Input.insertText", json!({ "text": "quatre" })).await?;
    holds(
        browser,
        &[
            "a.value === 'quatre'",
            "log.join() === 'compositionstart,compositionend'",
            "root.lastChild.textContent === 'quatre'",
        ],
    )
    .await
}

pub(crate) async fn choices_follow_the_model(browser: &mut Browser) -> Result<()> {
    open(browser, POLICY, "").await?;
    let form = |picked: usize| -> String {
        let mut markup = String::new();
        for at in 0..3 {
            let mark = |name: &str| if at == picked { format!(" {name}") } else { String::new() };
            markup += &format!(
                "<input type=\"radio\" name=\"r\" value=\"{at}\"{0}><input type=\"checkbox\"{0}>",
                mark("checked")
            );
        }
        let options: String = (0..3)
            .map(|at| {
                format!("<option{}>{at}</option>", if at == picked { " selected" } else { "" })
            })
            .collect();
        format!("{markup}<select>{options}</select>")
    };
    for (model, person) in [(0, 0), (1, 2), (1, 0), (2, 1), (0, 2)] {
        patch(browser, &form(model)).await?;
        let shows = "[[...root.querySelectorAll('[type=radio]')].findIndex(it => it.checked),
            [...root.querySelectorAll('[type=checkbox]')].map(it => +it.checked).join(''),
            root.querySelector('select').selectedIndex]";
        let boxes = ["100", "010", "001"][model];
        ensure!(browser.value(shows).await? == json!([model, boxes, model]), "{model}");
        // What a person clicks that the model does not take over is put back.
        browser
            .run(
                "root.querySelectorAll('[type=radio]')[arguments[0]].click();
                 root.querySelectorAll('[type=checkbox]')[arguments[0]].click();
                 root.querySelector('select').selectedIndex = arguments[0];",
                vec![json!(person)],
            )
            .await?;
        patch(browser, &form(model)).await?;
        ensure!(browser.value(shows).await? == json!([model, boxes, model]), "{model} {person}");
    }
    Ok(())
}

pub(crate) async fn what_a_person_opened_stays_open(browser: &mut Browser) -> Result<()> {
    open(browser, POLICY, "").await?;
    let markup =
        "<details><summary>a</summary>x</details><details open><summary>b</summary>y</details>";
    patch(browser, markup).await?;
    let open = "[...root.querySelectorAll('details')].map(it => it.open).join()";
    ensure!(browser.value(open).await? == "false,true");
    browser.run("root.querySelectorAll('summary').forEach(it => it.click())", Vec::new()).await?;
    patch(browser, &markup.replace("x", "z")).await?;
    ensure!(browser.value(open).await? == "true,false");
    Ok(())
}

pub(crate) async fn text_from_a_stranger_stays_text(browser: &mut Browser) -> Result<()> {
    open(browser, POLICY, "").await?;
    for hostile in [
        "<script>window.ran = 1</script>",
        "<img src=x onerror='window.ran = 1'>",
        "\"><svg onload=window.ran=1>",
        "</p><iframe srcdoc='<script>parent.ran=1</script>'>",
        "&lt;script&gt;window.ran = 1&lt;/script&gt;",
        "\u{202e}\u{0}\u{feff}]]>--><!--",
    ] {
        let escaped = hostile.replace('&', "&amp;").replace('<', "&lt;").replace('"', "&quot;");
        patch(browser, &format!("<p title=\"{escaped}\">{escaped}</p>")).await?;
        let text = browser
            .value("[root.innerText && root.firstChild.textContent, root.firstChild.title]")
            .await?;
        ensure!(text == json!([hostile, hostile]), "{hostile}: {text}");
    }
    holds(browser, &["window.ran === undefined", "root.childElementCount === 1"]).await?;
    // Markup that could run is a mistake in a view: it is refused whole, and said.
    patch(browser, "<p>new</p><script>window.ran = 1</script>").await?;
    holds(browser, &["window.ran === undefined", "root.innerText !== 'new'"]).await?;
    let lines = browser.take_console().await?;
    ensure!(
        matches!(&lines[..], [line] if line.contains("before byte") && line.contains("a script")),
        "{lines:?}"
    );
    Ok(())
}

pub(crate) async fn a_shadow_root_is_a_root_too(browser: &mut Browser) -> Result<()> {
    open(browser, POLICY, "").await?;
    browser
        .run(
            "window.shadow = root.attachShadow({ mode: 'open' });
             patch('<p>1</p><input id=\"a\">', shadow);
             window.a = shadow.getElementById('a'); a.focus();
             patch('<p>2</p><p>3</p><svg viewBox=\"0 0 1 1\"><foreignObject><p></p></foreignObject></svg><input id=\"a\">', shadow);",
            Vec::new(),
        )
        .await?;
    holds(
        browser,
        &[
            "shadow.activeElement === a",
            "shadow.childElementCount === 4",
            "shadow.querySelector('svg').viewBox.baseVal.width === 1",
            "shadow.querySelector('foreignObject p') instanceof HTMLParagraphElement",
        ],
    )
    .await
}

/// A translator puts elements of its own around every text, an extension adds to the end.
pub(crate) async fn what_others_changed_is_made_anew(browser: &mut Browser) -> Result<()> {
    const TRANSLATE: &str = "
        const text = root.querySelector('p').firstChild;
        const font = document.createElement('font');
        text.replaceWith(font);
        font.append('uno');";
    open(browser, POLICY, "").await?;
    for change in [TRANSLATE, "root.append(document.createElement('i'))", "root.replaceChildren()"]
    {
        patch(browser, "<p>one</p><p>two</p><input id=\"a\" value=\"3\">").await?;
        browser.run(change, Vec::new()).await?;
        patch(browser, "<p>four</p><p>two</p><input id=\"a\" value=\"5\">").await?;
        let is = browser.value("root.innerHTML").await?;
        ensure!(is == "<p>four</p><p>two</p><input id=\"a\" value=\"5\">", "after {change}: {is}");
    }
    Ok(())
}

/// What is to be shown is told again while the page is being changed: the last word holds.
pub(crate) async fn a_change_that_asks_for_another(browser: &mut Browser) -> Result<()> {
    open(browser, POLICY, "").await?;
    browser
        .run(
            "customElements.define('x-leaves', class extends HTMLElement {
                 disconnectedCallback() { patch('<p>last</p><p>word</p>'); }
             });",
            Vec::new(),
        )
        .await?;
    patch(browser, "<b>1</b><x-leaves></x-leaves><i>2</i>").await?;
    patch(browser, "<p>first</p><i>2</i>").await?;
    holds(browser, &["root.innerHTML === '<p>last</p><p>word</p>'"]).await
}
