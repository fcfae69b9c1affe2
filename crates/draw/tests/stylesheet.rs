//! `web/style/drawing.css` and the pictures fit together.

#![allow(clippy::unwrap_used)]

mod support;

use std::collections::BTreeSet;
use support::look::{look, type_of};

/// The sheet of every page, and that of the pictures of a door being hung.
fn css() -> String {
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../web/style");
    let read = |name| std::fs::read_to_string(folder.join(name)).unwrap();
    let css = ["drawing-hang.css", "drawing.css"].map(read).concat();
    // Without comments.
    css.split("/*").map(|part| part.split_once("*/").map_or(part, |(_, rest)| rest)).collect()
}

/// The stylesheet sets the sizes the crate reckons with, and none shows below 12 px
/// when a picture is 320 CSS px wide.
#[test]
fn type_is_set_as_reckoned_and_never_below_12_px() {
    let css = css();
    for (selector, class) in [(".t", "t"), (".t.v", "t v"), (".t.n", "t n")] {
        let (size, _) = type_of(class);
        let rule = format!(".drawing {selector} {{");
        let rule = css.lines().find(|line| line.starts_with(&rule)).unwrap();
        assert!(rule.contains(&format!("font-size: {size}px")), "{rule}");
        assert!(size >= 12.0);
    }
    for (name, svg) in support::goldens() {
        assert!(look(&svg, name).width <= 320.0, "{name} is wider than 320 units");
    }
}

#[test]
fn every_class_has_a_look_and_every_look_a_use() {
    let classes = |text: &str| -> BTreeSet<String> {
        let part = |part: &str| {
            part.chars().take_while(|c| c.is_ascii_alphabetic() || *c == '-').collect::<String>()
        };
        // A dot before a letter is a class; in `0.2` it is before a digit.
        text.split('.').skip(1).map(part).filter(|class| !class.is_empty()).collect()
    };
    let styled = classes(&css());
    let mut used: BTreeSet<String> = ["drawing".to_owned()].into();
    for (name, svg) in support::goldens() {
        for seen in look(&svg, name).seen {
            used.extend(seen.class.split(' ').map(str::to_owned));
        }
    }
    assert_eq!(used, styled);
}

/// WCAG 2.2: text 7:1 (1.4.6), what else has to be seen 3:1 (1.4.11), with the
/// fallback colours, in both schemes. The page's own colours are tested there.
#[test]
fn fallback_colours_have_contrast() {
    let css = css();
    let dark_at = css.find("prefers-color-scheme: dark").unwrap();
    let (light, dark) = css.split_at(dark_at);
    let colour = |scheme: &str, name: &str| -> Option<f64> {
        let (_, rest) = scheme.split_once(&format!("--d-{name}: var(--{name}, #"))?;
        Some(luminance(rest.get(..6).unwrap()))
    };
    let of = |name| {
        let light = colour(light, name).unwrap();
        [light, colour(dark, name).unwrap_or(light)]
    };
    for (over, under, least) in
        [("ink", "paper", 7.0), ("on-accent", "accent", 7.0), ("faint", "paper", 3.0)]
    {
        for (scheme, (over_light, under_light)) in of(over).into_iter().zip(of(under)).enumerate() {
            let (high, low) = (over_light.max(under_light), over_light.min(under_light));
            let ratio = (high + 0.05) / (low + 0.05);
            assert!(ratio >= least, "{over} on {under}, scheme {scheme}: {ratio:.2}:1");
        }
    }
}

/// Relative luminance of six hexadecimal digits (WCAG 2.2).
fn luminance(hex: &str) -> f64 {
    let channel = |at: usize| {
        let value =
            f64::from(u8::from_str_radix(hex.get(at..at + 2).unwrap(), 16).unwrap()) / 255.0;
        if value <= 0.04045 { value / 12.92 } else { ((value + 0.055) / 1.055).powf(2.4) }
    };
    0.2126 * channel(0) + 0.7152 * channel(2) + 0.0722 * channel(4)
}

/// #000 on #fff is 21:1 and #777 on #fff is 4.4781:1 (WCAG's own example values).
#[test]
fn luminance_agrees_with_known_ratios() {
    let on_white = |hex| 1.05 / (luminance(hex) + 0.05);
    assert!((on_white("000000") - 21.0_f64).abs() < 1e-9);
    assert!((on_white("777777") - 4.4781_f64).abs() < 5e-5);
    assert!((on_white("767676") - 4.5422_f64).abs() < 5e-5);
}
