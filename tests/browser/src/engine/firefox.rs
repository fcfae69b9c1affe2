//! Firefox by geckodriver. What WebDriver has no command for is done in the browser's own scope,
//! which geckodriver opens to us: `moz/context`.

use std::process::{Command, Stdio};

use anyhow::{Context as _, Result, bail, ensure};
use fantoccini::Client;
use futures::future::LocalBoxFuture;
use serde_json::{Map, Value, json};

use super::{Drive, Seen, find};
use crate::camera::Camera;
use crate::command::post;
use crate::driver::{Group, wait_for_line};
use crate::screen::{Media, Screen};

pub(super) const DRIVER: &str = "geckodriver";

/// Keeps what pages write to the console and ask of the network.
const LISTEN: &str = "
    const kept = window.kept = [];
    Services.ppmm.addMessageListener('kept:line', message => kept.push(message.data));
    // The console is heard where pages live: in the content processes, those to come included.
    Services.ppmm.loadProcessScript('data:,' + encodeURIComponent(`
        if (Services.appinfo.processType === Services.appinfo.PROCESS_TYPE_CONTENT)
            Cc['@mozilla.org/consoleAPI-storage;1'].getService(Ci.nsIConsoleAPIStorage)
                .addLogEventListener(({ wrappedJSObject: { level, innerID, arguments: words } }) => {
                    if (typeof innerID === 'number' && ['error', 'warn', 'debug'].includes(level))
                        sendAsyncMessage('kept:line',
                            { [level]: Array.from(words, String).join(' ') });
                }, Services.scriptSecurityManager.getSystemPrincipal());`), true);
    // Errors that nobody caught, and what a policy stopped.
    Services.console.registerListener({ observe(message) {
        if (message instanceof Ci.nsIScriptError && /^(content|CSP|CORS|Sub-resource)/.test(message.category))
            kept.push({ error: message.errorMessage });
    } });
    Services.obs.addObserver(channel => {
        const { URI, loadInfo } = channel.QueryInterface(Ci.nsIHttpChannel);
        // The browser's own requests belong to no page.
        if (loadInfo.browsingContextID || !loadInfo.triggeringPrincipal.isSystemPrincipal)
            kept.push({ request: URI.spec });
    }, 'http-on-opening-request');";

/// How many frames are drawn a second, where it is not to be as many as there can be: what a
/// scenario does before the frame that answers it, it then does every time.
pub(crate) fn frames() -> Option<u8> {
    std::env::var("HANGTRUE_FRAMES").ok()?.parse().ok()
}

#[derive(Debug)]
pub(super) struct Firefox {
    address: String,
    group: Group,
}

pub(super) fn start() -> Result<Firefox> {
    let mut group = Group::new()?;
    let mut command = Command::new(find(DRIVER).context("geckodriver is not installed")?);
    command.args(["--port=0", "--websocket-port=0", "--allow-system-access"]);
    // The window is to hold the largest screen.
    command.envs([("MOZ_HEADLESS_WIDTH", "1600"), ("MOZ_HEADLESS_HEIGHT", "1200")]);
    command.stdout(Stdio::piped()).stderr(group.ear()?);
    let port = wait_for_line(group.start(command)?.stdout.take(), |line| {
        line.split_once("Listening on 127.0.0.1:")?.1.parse::<u16>().ok()
    })
    .context(DRIVER)?;
    Ok(Firefox { address: format!("http://127.0.0.1:{port}"), group })
}

impl Drive for Firefox {
    fn address(&self) -> &str {
        &self.address
    }

    fn said(&self) -> String {
        self.group.said()
    }

    fn capabilities(&self) -> Map<String, Value> {
        let mut wanted = json!({
            "browserName": "firefox",
            "moz:firefoxOptions": {
                "args": ["-headless"],
                "prefs": {
                    "dom.w3c_touch_events.enabled": 1,
                    "dom.webshare.enabled": true,
                    // Two taps in quick succession at one place are two taps, as on a phone whose
                    // page is as wide as its screen.
                    "apz.allow_double_tap_zooming": false,
                    // Reading the clipboard asks the person, except in tests.
                    "dom.events.testing.asyncClipboard": true,
                    "services.settings.server": "data:,",
                    // A picture for a tab that nobody sees, which a page's policy may forbid.
                    "browser.chrome.site_icons": false,
                },
            },
        });
        if let Some(rate) = frames() {
            wanted["moz:firefoxOptions"]["prefs"]["layout.frame_rate"] = rate.into();
        }
        wanted.as_object().cloned().unwrap_or_default()
    }

    fn begin<'a>(&'a self, at: &'a Client) -> LocalBoxFuture<'a, Result<()>> {
        Box::pin(async move {
            browser_scope(at, LISTEN, Value::Null).await?;
            Ok(())
        })
    }

    fn set_screen<'a>(&'a self, at: &'a Client, to: Screen) -> LocalBoxFuture<'a, Result<()>> {
        const SCRIPT: &str = "
            const { width, height, touch } = arguments[0];
            const { style } = gBrowser.selectedBrowser;
            for (const at of ['', 'min-', 'max-']) {
                style.setProperty(`${at}width`, `${width}px`);
                style.setProperty(`${at}height`, `${height}px`);
            }
            // Coarse; or fine, and it can hover.
            for (const which of ['primary', 'all'])
                Services.prefs.setIntPref(`ui.${which}PointerCapabilities`, touch ? 1 : 6);";
        let Screen { width, height, touch } = to;
        Box::pin(async move {
            let size = json!({ "width": width, "height": height, "touch": touch });
            browser_scope(at, SCRIPT, size).await?;
            super::wait_for_size(at, to).await
        })
    }

    fn set_media<'a>(&'a self, at: &'a Client, to: Media) -> LocalBoxFuture<'a, Result<()>> {
        // As the desktop says it, and not on the tab, whose settings a navigation forgets.
        const SCRIPT: &str = "
            const { dark, print, still, contrast, forced } = arguments[0];
            const set = (name, value) => Services.prefs.setIntPref(name, value);
            set('layout.css.prefers-color-scheme.content-override', dark ? 0 : 1);
            set('ui.prefersReducedMotion', still ? 1 : 0);
            set('ui.useAccessibilityTheme', contrast || forced ? 1 : 0);
            set('browser.display.document_color_use', forced ? 2 : 1);
            gBrowser.selectedBrowser.browsingContext.mediumOverride = print ? 'print' : '';";
        let media = json!({
            "dark": to.dark, "print": to.print, "still": to.still,
            "contrast": to.contrast, "forced": to.forced,
        });
        Box::pin(async move {
            browser_scope(at, SCRIPT, media).await?;
            Ok(())
        })
    }

    fn set_languages<'a>(&'a self, at: &'a Client, to: &'a str) -> LocalBoxFuture<'a, Result<()>> {
        const SCRIPT: &str = "Services.prefs.setStringPref('intl.accept_languages', arguments[0]);";
        Box::pin(async move {
            browser_scope(at, SCRIPT, json!(to)).await?;
            Ok(())
        })
    }

    fn set_camera<'a>(&'a self, at: &'a Client, to: Camera<'a>) -> LocalBoxFuture<'a, Result<()>> {
        const SCRIPT: &str = "
            const { refused, missing } = arguments[0];
            const [always, never] = [1, 2];
            Services.prefs.setIntPref('permissions.default.camera', refused ? never : always);
            Services.prefs.setBoolPref('media.navigator.streams.fake', !missing);";
        let refused = matches!(to, Camera::Refused);
        let to_be = json!({ "refused": refused, "missing": matches!(to, Camera::Missing) });
        Box::pin(async move {
            ensure!(!matches!(to, Camera::Sees(_)), "Firefox's camera sees a pattern of its own");
            browser_scope(at, SCRIPT, to_be).await?;
            Ok(())
        })
    }

    fn take_seen<'a>(&'a self, at: &'a Client) -> LocalBoxFuture<'a, Result<Vec<Seen>>> {
        Box::pin(async move {
            // Lines come from another process, in their order: when this one is there, all are.
            at.execute("console.debug('the last')", Vec::new()).await?;
            let mut seen = Vec::new();
            for _ in 0..500 {
                let kept = browser_scope(at, "return window.kept.splice(0)", Value::Null).await?;
                let mut is_last = false;
                for line in kept.as_array().into_iter().flatten() {
                    let text = |key: &str| line[key].as_str().map(str::to_owned);
                    is_last |= line["debug"] == "the last";
                    seen.extend(text("error").or_else(|| text("warn")).map(Seen::Line));
                    seen.extend(text("request").map(Seen::Request));
                }
                if is_last {
                    return Ok(seen);
                }
                tokio::time::sleep(std::time::Duration::from_millis(10)).await;
            }
            bail!("Firefox does not tell what its console holds")
        })
    }
}

/// Runs a script body where the browser's own window is `window`.
async fn browser_scope(at: &Client, script: &str, argument: Value) -> Result<Value> {
    post(at, "moz/context", json!({ "context": "chrome" })).await?;
    let value = at.execute(script, vec![argument]).await;
    post(at, "moz/context", json!({ "context": "content" })).await?;
    value.context("in the browser's own scope")
}
