//! A browser with the site in it: what a person does, and what a person sees.

use std::cell::Cell;
use std::time::{Duration, Instant};

use anyhow::{Context as _, Result, anyhow, bail, ensure};
use fantoccini::actions::{
    InputSource as _, KeyAction, KeyActions, MOUSE_BUTTON_LEFT, PointerAction, TouchActions,
};
use fantoccini::elements::Element;
use fantoccini::error::{CmdError, ErrorStatus};
use fantoccini::key::Key;
use fantoccini::{Client, ClientBuilder, Locator};
use hyper_util::client::legacy::connect::HttpConnector;
use serde_json::{Value, json};

use crate::command::get;
use crate::engine::{Drive, Engine, Feature, Seen};
use crate::screen::{Media, Screen};
use crate::server::{Server, Site};

/// How long a condition may take to come true. Far more than it needs: a slow machine is no failure.
pub(crate) const DEADLINE: Duration = Duration::from_secs(20);

/// A script body: where to tap an element, or what lies over it.
const WHERE_TO_TAP: &str = include_str!("where_to_tap.js");

/// A browser session, its driver and the server its pages come from.
#[derive(Debug)]
pub struct Browser {
    engine: Engine,
    pub(crate) client: Client,
    /// Where pages come from. A scenario may stop it, or put another in its place.
    pub server: Server,
    console: Vec<String>,
    requests: Vec<String>,
    origins: Vec<String>,
    pub(crate) media: Cell<Media>,
    // Last: the driver must outlive the client that ends the session.
    pub(crate) drive: Box<dyn Drive>,
}

impl Browser {
    /// Starts the engine for a scenario that needs that, with the built site behind it.
    ///
    /// # Errors
    /// When the driver or the session does not start, or `dist/` is not there.
    pub async fn start(engine: Engine, needs: &[Feature]) -> Result<Self> {
        let drive = engine.start(needs)?;
        let server = Server::start(Site::dist()?.collecting(drive.needs_collector()))?;
        let client = ClientBuilder::new(HttpConnector::new())
            .capabilities(drive.capabilities())
            .connect(drive.address())
            .await
            .with_context(|| format!("no session with {}", engine.name()))?;
        drive.begin(&client).await?;
        let origins = vec![server.origin()];
        let (console, requests) = (Vec::new(), Vec::new());
        let media = Cell::default();
        Ok(Self { engine, client, server, console, requests, origins, media, drive })
    }

    /// The engine this is.
    #[must_use]
    pub fn engine(&self) -> Engine {
        self.engine
    }

    /// Puts another site behind the browser, at an origin that this session has not seen, and
    /// returns to an empty page.
    ///
    /// # Errors
    /// When no port can be had.
    pub async fn serve(&mut self, site: Site) -> Result<()> {
        self.read_logs().await?;
        self.client.goto("about:blank").await?;
        let site = site.collecting(self.drive.needs_collector());
        // A port that was given back may be given again, and what was kept there is still kept.
        loop {
            self.server = Server::start(site.clone())?;
            if !self.origins.contains(&self.server.origin()) {
                break;
            }
        }
        self.origins.push(self.server.origin());
        Ok(())
    }

    /// Sets the screen, light, and opens a path of the site.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn open(&mut self, screen: Screen, path: &str) -> Result<()> {
        self.set_screen(screen).await?;
        self.goto(path).await
    }

    /// Opens a path of the site.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn goto(&self, path: &str) -> Result<()> {
        let address = format!("{}{path}", self.server.origin());
        self.client.goto(&address).await.with_context(|| format!("cannot open {path}"))
    }

    /// Runs a script body in the page and returns what it returns.
    ///
    /// # Errors
    /// When it throws.
    pub async fn run(&self, script: &str, arguments: Vec<Value>) -> Result<Value> {
        let ran = self.client.execute(script, arguments).await;
        ran.with_context(|| format!("this script failed: {}", script.trim()))
    }

    /// The value of a JavaScript expression.
    ///
    /// # Errors
    /// When it throws.
    pub async fn value(&self, expression: &str) -> Result<Value> {
        self.run(&format!("return ({expression});"), Vec::new()).await
    }

    /// Waits until a JavaScript expression is truthy, and returns its value. The page may be left
    /// for another meanwhile.
    ///
    /// # Errors
    /// After the deadline, with what the page shows.
    pub async fn until(&self, expression: &str) -> Result<Value> {
        let start = Instant::now();
        loop {
            let value = match self.value(expression).await {
                Err(error) if is_of_a_left_page(&error) => Value::Null,
                value => value?,
            };
            let is_falsy = matches!(&value, Value::Null | Value::Bool(false))
                || value == json!(0)
                || value == json!("");
            if !is_falsy {
                return Ok(value);
            }
            if start.elapsed() > DEADLINE {
                let shown = self.value("location.href + '\\n' + document.body.innerText").await?;
                bail!(
                    "still not true after {DEADLINE:?}: {expression}\nthe page shows: {}",
                    shown.as_str().unwrap_or_default()
                );
            }
            tokio::time::sleep(Duration::from_millis(15)).await;
        }
    }

    /// The element of a CSS selector, waited for.
    ///
    /// # Errors
    /// When there is none before the deadline.
    pub async fn find(&self, css: &str) -> Result<Element> {
        // By the script that waits for it: asked by a command of its own just after a page is
        // loaded, WebKit's driver answers of one that is there, once in fifteen times, that it is not.
        let found = self.until(&format!("document.querySelector({})", json!(css))).await?;
        let id = found.as_object().and_then(|found| found.values().next()?.as_str());
        let id = id.with_context(|| format!("`{css}` is no element but {found}"))?;
        Ok(Element::from_element_id(self.client.clone(), id.to_owned().into()))
    }

    /// The text an element shows.
    ///
    /// # Errors
    /// When there is no such element.
    pub async fn text(&self, css: &str) -> Result<String> {
        Ok(self.find(css).await?.text().await?)
    }

    /// Touches the middle of an element.
    ///
    /// # Errors
    /// When there is no such element, or something else lies over its middle.
    pub async fn tap(&self, css: &str) -> Result<()> {
        self.find(css).await?;
        let place = self.run(WHERE_TO_TAP, vec![json!(css)]).await?;
        let (Some(x), Some(y)) = (place[0].as_f64(), place[1].as_f64()) else {
            bail!("`{css}` cannot be tapped: over its middle lies {place}");
        };
        let finger = TouchActions::new("finger".to_owned())
            .then(PointerAction::MoveTo { duration: None, x, y })
            .then(PointerAction::Down { button: MOUSE_BUTTON_LEFT })
            .then(PointerAction::Up { button: MOUSE_BUTTON_LEFT });
        let touched = self.client.perform_actions(finger).await;
        touched.with_context(|| format!("`{css}` cannot be touched at {x}, {y}"))?;
        // Nobody is left to ask where the touch led to another page, or opened a question.
        if let Ok(Value::String(missed)) = self.value("window.missed").await {
            bail!("`{css}` went away under the finger: {missed} was touched at {x}, {y}");
        }
        Ok(())
    }

    /// Types on the keyboard, into whatever has the focus. WebDriver's code points stand for keys
    /// that write nothing: see [`fantoccini::key::Key`].
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn type_keys(&self, keys: &str) -> Result<()> {
        let mut keyboard = KeyActions::new("keyboard".to_owned());
        for value in keys.chars() {
            keyboard = keyboard.then(KeyAction::Down { value }).then(KeyAction::Up { value });
        }
        let typed = self.client.perform_actions(keyboard).await;
        typed.with_context(|| format!("`{keys}` cannot be typed"))
    }

    /// What the clipboard holds, by pasting it.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn pasted(&self) -> Result<String> {
        let field = "const field = document.body.appendChild(document.createElement('textarea'));
            field.id = 'pasted'; field.focus({ preventScroll: true });";
        self.run(field, Vec::new()).await?;
        let control = char::from(Key::Control);
        let keys = KeyActions::new("keyboard".to_owned())
            .then(KeyAction::Down { value: control })
            .then(KeyAction::Down { value: 'v' })
            .then(KeyAction::Up { value: 'v' })
            .then(KeyAction::Up { value: control });
        self.client.perform_actions(keys).await?;
        let text = self.until("document.getElementById('pasted').value").await?;
        self.run("document.getElementById('pasted').remove()", Vec::new()).await?;
        Ok(text.as_str().unwrap_or_default().to_owned())
    }

    /// The role a screen reader is given.
    ///
    /// # Errors
    /// When there is no such element.
    pub async fn role(&self, css: &str) -> Result<String> {
        self.computed(&self.find(css).await?, "computedrole").await
    }

    /// The name a screen reader is given.
    ///
    /// # Errors
    /// When there is no such element.
    pub async fn label(&self, css: &str) -> Result<String> {
        self.computed(&self.find(css).await?, "computedlabel").await
    }

    /// Role, name and the beginning of the markup of every element that is shown.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn heard(&self, css: &str) -> Result<Vec<(String, String, String)>> {
        let shown = "return arguments[0].checkVisibility() ? arguments[0].outerHTML : ''";
        let mut all = Vec::new();
        for element in self.client.find_all(Locator::Css(css)).await? {
            let markup = self.run(shown, vec![serde_json::to_value(&element)?]).await?;
            let markup: String = markup.as_str().unwrap_or_default().chars().take(160).collect();
            if !markup.is_empty() {
                let role = self.computed(&element, "computedrole").await?;
                let label = self.computed(&element, "computedlabel").await?;
                all.push((role, label, markup));
            }
        }
        Ok(all)
    }

    async fn computed(&self, element: &Element, what: &str) -> Result<String> {
        let path = format!("element/{}/{what}", element.element_id().as_ref());
        let value = get(&self.client, &path).await?;
        value.as_str().map(str::to_owned).ok_or_else(|| anyhow!("{what} is {value}"))
    }

    /// Goes back, as by the browser's button.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn back(&self) -> Result<()> {
        Ok(self.client.back().await?)
    }

    /// Reloads from inside the page: unlike the driver's own command, this works without a server.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn reload(&self) -> Result<()> {
        self.run("window.isOld = true; location.reload();", Vec::new()).await?;
        self.until("!window.isOld && document.readyState === 'complete'").await?;
        Ok(())
    }

    /// Takes the lines the console has at this moment: a scenario that means to cause some takes
    /// them; whatever is left at the end fails it.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn take_console(&mut self) -> Result<Vec<String>> {
        self.read_logs().await?;
        Ok(std::mem::take(&mut self.console))
    }

    /// Takes the addresses of the requests made since they were last taken; at the end of a
    /// scenario those left must all be of the site's own origin.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn take_requests(&mut self) -> Result<Vec<String>> {
        self.read_logs().await?;
        Ok(std::mem::take(&mut self.requests))
    }

    async fn read_logs(&mut self) -> Result<()> {
        for seen in self.drive.take_seen(&self.client).await? {
            match seen {
                Seen::Line(line) => self.console.push(line),
                Seen::Request(address) => self.requests.push(address),
            }
        }
        Ok(())
    }

    /// What holds at the end of every scenario: nothing on the console, nothing from elsewhere.
    ///
    /// # Errors
    /// When it does not hold.
    pub async fn check(&mut self) -> Result<()> {
        self.read_logs().await?;
        let lines = self.console.join("\n");
        ensure!(lines.is_empty(), "lines left on the console:\n{lines}");
        let own = |address: &&String| {
            let inner = ["data:", "blob:", "about:"];
            inner.iter().any(|start| address.starts_with(start))
                || self.origins.iter().any(|origin| address.starts_with(&format!("{origin}/")))
        };
        let foreign: Vec<&String> = self.requests.iter().filter(|address| !own(address)).collect();
        ensure!(foreign.is_empty(), "requests to other origins: {foreign:?}");
        Ok(())
    }

    /// Closes the tab; another takes its place, with nothing open in it.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn in_a_new_tab(&self) -> Result<()> {
        let new = self.client.new_window(true).await?;
        self.client.close_window().await?;
        self.client.switch_to_window(new.handle).await?;
        Ok(())
    }

    /// From here on the page is the one in that frame; its origin may be another.
    ///
    /// # Errors
    /// When there is no such frame.
    pub async fn enter_frame(&self, css: &str) -> Result<()> {
        Ok(self.find(css).await?.enter_frame().await?)
    }

    /// Back to the page around the frame.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn leave_frame(&self) -> Result<()> {
        Ok(self.client.enter_parent_frame().await?)
    }

    /// Ends the session. Dropping the browser would do it too, less politely.
    pub async fn close(self) {
        let _ = self.client.close().await;
        drop(self.drive);
    }
}

/// Whether a script had no answer because its page was just being left.
fn is_of_a_left_page(error: &anyhow::Error) -> bool {
    let Some(CmdError::Standard(answer)) = error.downcast_ref() else { return false };
    match answer.error {
        // WebKit's driver says so,
        ErrorStatus::NoSuchFrame => answer.message.contains("before the unload event"),
        // and this Chromium's.
        ErrorStatus::Timeout => {
            let says = |what| answer.message.contains(what);
            says("aborted by navigation") || says("no such execution context")
        }
        _ => false,
    }
}
