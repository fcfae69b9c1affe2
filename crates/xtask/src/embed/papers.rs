//! What stands beside the script: manifest, package, hashes, the lines to paste.

use anyhow::Result;
use serde_json::{Value, json};

use super::style::PROMISED;
use super::{HOST_POLICY, Hashed, VERSION};

/// The tag.
const TAG: &str = "hangtrue-survey";

/// Attributes: name, type, what it is. All but `name`, `required` and `remember` are
/// properties too.
const ATTRIBUTES: [(&str, &str, &str); 8] = [
    (
        "profile",
        "string | object",
        "The dealer's rules: the address of a file of the page's or the script's own origin, or, as a property, the object.",
    ),
    ("lang", "string", "The language, as en, es or fr; else that of the page."),
    ("unit", "\"in\" | \"mm\"", "The unit that fields begin with."),
    ("order", "string", "An order to open: a link or its payload."),
    ("theme", "\"light\" | \"dark\" | \"auto\"", "The colour scheme; auto if left out."),
    ("name", "string", "The name under which a form sends the order's link."),
    ("required", "boolean", "A form is not sent without a finished order."),
    ("remember", "boolean", "Keeps the draft on the reader's device, under the element's id."),
];

const EVENTS: [(&str, &str); 4] = [
    ("hangtrue-ready", "The survey is shown. detail: { version }"),
    (
        "hangtrue-change",
        "The order has changed. detail: { order, link, line }; link and line are null while something stands against sending it.",
    ),
    (
        "hangtrue-complete",
        "The order has come to where it is handed over. detail: { order, link, line }",
    ),
    (
        "hangtrue-error",
        "Something could not be had. detail: { code: \"load\" | \"profile\", message }. With profile the survey goes on by the built-in rules.",
    ),
];

const SLOTS: [(&str, &str); 3] = [
    (
        "",
        "Shown without JavaScript, while loading, and where the survey cannot run: a telephone number, a link to the full page.",
    ),
    ("loading", "Shown while loading, in the place of our own word."),
    ("blocked", "Shown where the survey cannot run, in the place of our own word."),
];

const PARTS: [(&str, &str); 6] = [
    ("survey", "All of it."),
    ("heading", "The heading of a screen."),
    ("button", "A button."),
    ("primary", "The button that goes on; also a button."),
    ("field", "A field."),
    ("waiting", "What is shown until the survey is."),
];

/// Custom Elements Manifest, schema 1.0.0.
pub(crate) fn manifest(script: &str) -> Result<String> {
    let described = |list: &[(&str, &str)]| -> Vec<Value> {
        list.iter().map(|(name, what)| json!({ "name": name, "description": what })).collect()
    };
    let event = |(name, what): &(&str, &str)| json!({ "name": name, "description": what, "type": { "text": "CustomEvent" } });
    let attribute = |(name, kind, what): &(&str, &str, &str)| json!({ "name": name, "description": what, "type": { "text": kind } });
    let properties = PROMISED.iter().map(|(_, host, what)| (*host, *what));
    let properties: Vec<_> =
        properties.chain([("--hangtrue-height", "The height that is reserved; 720px.")]).collect();
    let export = json!({ "kind": "custom-element-definition", "name": TAG,
        "declaration": { "name": "HangtrueSurvey", "module": script } });
    let manifest = json!({
        "schemaVersion": "1.0.0",
        "modules": [{
            "kind": "javascript-module",
            "path": script,
            "declarations": [{
                "kind": "class",
                "customElement": true,
                "tagName": TAG,
                "name": "HangtrueSurvey",
                "description": "Measures the rear opening of a truck body for a roll-up door.",
                "superclass": { "name": "HTMLElement" },
                "attributes": ATTRIBUTES.iter().map(attribute).collect::<Vec<_>>(),
                "events": EVENTS.iter().map(event).collect::<Vec<_>>(),
                "slots": described(&SLOTS),
                "cssParts": described(&PARTS),
                "cssProperties": described(&properties)
            }],
            "exports": [export]
        }]
    });
    Ok(serde_json::to_string_pretty(&manifest)? + "\n")
}

/// An npm package of the folder as it is.
pub(crate) fn package(script: &str) -> Result<String> {
    let script = format!("./{script}");
    let package = json!({
        "name": TAG,
        "version": VERSION,
        "description": "Measures the rear opening of a truck body for a roll-up door: an element for any page.",
        "license": "MIT",
        "type": "module",
        "main": script,
        "module": script,
        "types": "./hangtrue-survey.d.ts",
        "customElements": "./custom-elements.json",
        "exports": {
            ".": { "types": "./hangtrue-survey.d.ts", "default": script },
            "./*": "./*"
        },
        "sideEffects": true,
        "files": ["*"]
    });
    Ok(serde_json::to_string_pretty(&package)? + "\n")
}

/// The hashes by file.
pub(crate) fn hashes(hashes: &[Hashed]) -> Result<String> {
    let files: serde_json::Map<String, Value> =
        hashes.iter().map(|file| (file.name.clone(), file.integrity.clone().into())).collect();
    let all = json!({ "version": VERSION, "files": files, "policy": HOST_POLICY });
    Ok(serde_json::to_string_pretty(&all)? + "\n")
}

/// The lines to paste into a page, and what its policy must allow. The wasm's hash stands
/// in the script, and the script's here.
pub(crate) fn snippet(hashes: &[Hashed]) -> String {
    let [script, ..] = hashes else { return String::new() };
    format!(
        "<!-- In the page's head. The page's policy, if it has one, must allow at least this,\n     \
         where HOST is where these files are served from:\n     {HOST_POLICY} -->\n\
         <script type=\"module\" crossorigin src=\"embed/{}\"\n        integrity=\"{}\"></script>\n\
         <!-- In the page's style sheet: the height is there before the script is. -->\n\
         <style>{TAG} {{ display: block; min-height: 720px }}</style>\n\n\
         <!-- Where the survey shall stand. What is inside is shown where it cannot run. -->\n\
         <{TAG} profile=\"profile.json\">\n  \
         <p>Call us: <a href=\"tel:+15550100140\">+1 555 010 0140</a></p>\n</{TAG}>\n",
        script.name, script.integrity
    )
}
