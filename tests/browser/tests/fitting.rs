//! As a person needs it: text spaced out, the page enlarged, more contrast, colours of one's own,
//! nothing that moves. In every state.

use crate::access::can_be_read;
use crate::fits::{loses_nothing, space_the_text};
use crate::{builder, hang, states};
use anyhow::{Result, ensure};
use hangtrue_browser::{Browser, Feature, Media, Screen};
use serde_json::json;

/// What 1280 by 1024 px are at 200 % and at 400 % (WCAG 2.2, 1.4.4 and 1.4.10).
const ENLARGED: [Screen; 2] = [
    Screen { width: 640, height: 512, touch: false },
    Screen { width: 320, height: 256, touch: false },
];

async fn spaced(browser: &Browser, name: &str) -> Result<()> {
    space_the_text(browser).await?;
    loses_nothing(browser, name).await
}

async fn enlarged(browser: &Browser, name: &str) -> Result<()> {
    let width = browser.value("innerWidth").await?;
    loses_nothing(browser, &format!("{name} at {width} px")).await
}

pub(crate) async fn spaced_text_on_the_walk(browser: &mut Browser) -> Result<()> {
    states::of_the_walk(browser, Screen::PHONE, "en", spaced).await?;
    states::beside_the_walk(browser, Screen::PHONE, spaced).await
}

pub(crate) async fn spaced_text_elsewhere(browser: &mut Browser) -> Result<()> {
    states::of_the_desk(browser, Screen::DESK, spaced).await?;
    hang::states(browser, Screen::PHONE, "en", spaced).await?;
    builder::states(browser, Screen::DESK, spaced).await
}

pub(crate) async fn an_enlarged_walk(browser: &mut Browser) -> Result<()> {
    for screen in ENLARGED {
        states::of_the_walk(browser, screen, "en", enlarged).await?;
        states::beside_the_walk(browser, screen, enlarged).await?;
    }
    Ok(())
}

pub(crate) async fn an_enlarged_desk_and_builder(browser: &mut Browser) -> Result<()> {
    for screen in ENLARGED {
        states::of_the_desk(browser, screen, enlarged).await?;
        builder::states(browser, screen, enlarged).await?;
    }
    Ok(())
}

pub(crate) async fn an_enlarged_page_of_hanging(browser: &mut Browser) -> Result<()> {
    for screen in ENLARGED {
        hang::states(browser, screen, "en", enlarged).await?;
    }
    Ok(())
}

/// A bar that takes room of the page, as on a desk, at the smallest width: in every engine, by a
/// sheet of its own where the engine's bar lies over the page.
pub(crate) async fn beside_a_scroll_bar(browser: &mut Browser) -> Result<()> {
    const BAR: &str = "
        const root = document.documentElement;
        if (root.clientWidth === innerWidth) {
            const sheet = new CSSStyleSheet();
            sheet.replaceSync('html { width: calc(100% - 15px) !important; overflow: visible }');
            document.adoptedStyleSheets = [sheet];
        }
        return innerWidth - Math.min(root.clientWidth, root.offsetWidth);";
    const SPILLS: &str = "
        const edge = document.documentElement.getBoundingClientRect().right;
        return [...document.querySelectorAll('main, main *, header, header *')]
            .filter(it => it.checkVisibility() && !it.closest('svg, .visually-hidden, .scroll, .paper')
                && it.getBoundingClientRect().right > edge + 0.5)
            .map(it => it.outerHTML.slice(0, 120));";
    let narrow = Screen { width: 320, height: 568, touch: false };
    let visit = async |browser: &Browser, name: &str| {
        let bar = browser.run(BAR, Vec::new()).await?;
        ensure!(bar.as_u64() >= Some(10), "{name}: the bar takes {bar} px");
        let spills = browser.run(SPILLS, Vec::new()).await?;
        ensure!(spills == json!([]), "{name}: {spills:#}");
        Ok(())
    };
    states::of_the_walk(browser, narrow, "en", visit).await?;
    states::beside_the_walk(browser, narrow, visit).await
}

/// A script body: what would move by itself, or does.
const MOVES: &str = "
    const moves = document.getAnimations().map(it => `${it.constructor.name} is running`);
    for (const it of document.querySelectorAll('*')) {
        const { animationName, transitionDuration, scrollBehavior } = getComputedStyle(it);
        if (animationName !== 'none' || /[1-9]/.test(transitionDuration) || scrollBehavior === 'smooth')
            moves.push(it.outerHTML.slice(0, 100));
    }
    return moves;";

/// A script body that waits until the page has been drawn as it now is to look.
const DRAWN: &str = "return new Promise((done) => {
    requestAnimationFrame(() => requestAnimationFrame(() => done(true)));
});";

/// A script body: shows every button as if it were held down, or no longer. What the sheets say of
/// `:active` they say of a class instead, which weighs the same and which a script can set.
const PRESSED: &str = "
    const rename = rules => {
        for (const rule of rules) {
            if (rule.selectorText?.includes(':active'))
                rule.selectorText = rule.selectorText.replaceAll(':active', '.pressed');
            if (rule.cssRules) rename(rule.cssRules);
        }
    };
    for (const sheet of [...document.styleSheets, ...document.adoptedStyleSheets]) rename(sheet.cssRules);
    const buttons = [...document.querySelectorAll('button, .button')];
    for (const it of buttons) it.classList.toggle('pressed', arguments[0]);
    return buttons.filter(it => it.checkVisibility()).length;";

/// A finger that rests on a button hides most of it, but not all, and a pen or a mouse nothing.
async fn can_be_read_pressed(browser: &Browser, name: &str) -> Result<()> {
    let buttons = browser.run(PRESSED, vec![json!(true)]).await?;
    ensure!(buttons.as_u64() > Some(0), "{name}: no button");
    can_be_read(browser, &format!("{name}, pressed"), 5).await?;
    browser.run(PRESSED, vec![json!(false)]).await?;
    Ok(())
}

async fn as_wished(browser: &Browser, name: &str) -> Result<()> {
    let as_it_was = browser.media();
    let media = Media::default();
    browser.set_media(Media { still: true, ..media }).await?;
    let moves = browser.run(MOVES, Vec::new()).await?;
    ensure!(moves == json!([]), "{name} moves: {moves}");
    // Still here too: a colour on its way from light to dark is measured as neither.
    let media = Media { still: true, ..media };
    can_be_read_pressed(browser, name).await?;
    browser.set_media(Media { dark: true, ..media }).await?;
    can_be_read_pressed(browser, &format!("{name}, dark")).await?;
    let mut wishes = vec![
        ("more contrast, dark", Media { contrast: true, dark: true, ..media }),
        ("more contrast", Media { contrast: true, ..media }),
    ];
    if browser.engine().lacks(Feature::ForcedColors).is_none() {
        wishes.push(("forced colours", Media { forced: true, ..media }));
    }
    for (wish, media) in wishes {
        browser.set_media(media).await?;
        browser.run(DRAWN, Vec::new()).await?;
        let name = format!("{name}, {wish}");
        loses_nothing(browser, &name).await?;
        // Forced colours are the person's own pairs: how far apart those are, the page has no say.
        if !media.forced {
            can_be_read(browser, &name, 5).await?;
        }
        let file = name.replace(", ", "-").replace(' ', "-");
        browser.shoot_as_it_is(&format!("wished-{file}")).await?;
    }
    browser.set_media(as_it_was).await
}

pub(crate) async fn contrast_colours_and_stillness_of_the_walk(
    browser: &mut Browser,
) -> Result<()> {
    states::of_the_walk(browser, Screen::PHONE, "en", as_wished).await?;
    states::beside_the_walk(browser, Screen::PHONE, as_wished).await
}

pub(crate) async fn contrast_colours_and_stillness_of_hanging(browser: &mut Browser) -> Result<()> {
    hang::states(browser, Screen::PHONE, "en", as_wished).await
}

pub(crate) async fn contrast_colours_and_stillness_elsewhere(browser: &mut Browser) -> Result<()> {
    states::of_the_desk(browser, Screen::DESK, as_wished).await?;
    builder::states(browser, Screen::DESK, as_wished).await
}
