//! A second pair of eyes: reads a picture back from its XML and says where everything is.
//! Shares no code with the writer.

use roxmltree::{Document, Node};

/// A box: left, top, right, bottom.
pub type Extent = [f64; 4];

/// One element that is seen, and the box around it.
#[derive(Debug)]
pub struct Seen {
    pub tag: String,
    pub class: String,
    pub text: String,
    pub extent: Extent,
}

/// A picture as read back.
#[derive(Debug)]
pub struct Look {
    pub width: f64,
    pub height: f64,
    pub title: String,
    pub description: String,
    pub seen: Vec<Seen>,
}

fn number(node: Node<'_, '_>, name: &str) -> f64 {
    let text = node.attribute(name).unwrap_or_else(|| panic!("{node:?} has no {name}"));
    parse(text)
}

fn parse(text: &str) -> f64 {
    let value: f64 = text.parse().unwrap_or_else(|_| panic!("{text:?} is not a number"));
    assert!(value.is_finite(), "{text:?} is not finite");
    let decimals = text.split_once('.').map_or(0, |(_, rest)| rest.len());
    assert!(decimals <= 2, "{text:?} has more than two decimals");
    value
}

/// Advance widths of a wide sans-serif (DejaVu Sans, bold for readings), rounded up, in em.
fn advance(letter: char, bold: bool) -> f64 {
    let regular = match letter {
        ' ' | '\u{a0}' | '.' | ',' | '\'' => 0.32,
        'i' | 'j' | 'l' | '/' => 0.34,
        'f' | 't' | 'r' => 0.42,
        'm' | 'w' => 0.98,
        '0'..='9' => 0.64,
        _ => 0.62,
    };
    if bold { regular * 1.1 } else { regular }
}

/// Font size and weight by class, as `web/style/drawing.css` has them.
pub fn type_of(class: &str) -> (f64, bool) {
    let has = |name| class.split(' ').any(|one| one == name);
    if has("n") {
        (19.0, true)
    } else if has("v") {
        (14.5, true)
    } else {
        (13.5, false)
    }
}

fn text_extent(node: Node<'_, '_>, class: &str) -> Extent {
    let text = node.text().unwrap_or_default();
    let (size, bold) = type_of(class);
    let width: f64 = text.chars().map(|letter| advance(letter, bold)).sum::<f64>() * size;
    let (x, y) = (number(node, "x"), number(node, "y"));
    let left = match node.attribute("text-anchor") {
        None => x,
        Some("middle") => x - width / 2.0,
        Some("end") => x - width,
        Some(other) => panic!("text-anchor {other:?}"),
    };
    // Digits and capitals stand on the line; little goes below it.
    [left, y - size * 0.74, left + width, y + size * 0.2]
}

/// The box around the points of a path, the control points of its curves with them.
fn path_extent(d: &str) -> Extent {
    let mut extent = [f64::MAX, f64::MAX, f64::MIN, f64::MIN];
    let mut here = (0.0, 0.0);
    let mut rest = d;
    let mut add = |(x, y): (f64, f64)| {
        extent = [extent[0].min(x), extent[1].min(y), extent[2].max(x), extent[3].max(y)];
    };
    while let Some(letter) = rest.chars().next() {
        rest = &rest[1..];
        let end = rest.find(|c: char| c.is_ascii_alphabetic()).unwrap_or(rest.len());
        let numbers: Vec<f64> = rest[..end].split_whitespace().map(parse).collect();
        rest = &rest[end..];
        match letter {
            'M' | 'L' | 'Q' => {
                assert!(!numbers.is_empty() && numbers.len().is_multiple_of(2), "{d}");
                for pair in numbers.chunks(2) {
                    here = (pair[0], pair[1]);
                    add(here);
                }
            }
            'v' => {
                here.1 += numbers[0];
                add(here);
            }
            'Z' => assert!(numbers.is_empty(), "{d}"),
            other => panic!("{other:?} in {d}"),
        }
    }
    extent
}

/// Reads `svg` back; panics, saying why, where it is not as every picture must be.
pub fn look(svg: &str, id: &str) -> Look {
    let document = Document::parse(svg).unwrap_or_else(|why| panic!("{why}: {svg}"));
    let root = document.root_element();
    assert_eq!(root.tag_name().name(), "svg");
    assert_eq!(root.attribute("role"), Some("img"));
    assert_eq!(root.attribute("aria-labelledby"), Some(format!("{id}-title").as_str()));
    assert_eq!(root.attribute("aria-describedby"), Some(format!("{id}-desc").as_str()));
    let view: Vec<f64> = root.attribute("viewBox").unwrap().split(' ').map(parse).collect();
    assert_eq!(view[..2], [0.0, 0.0]);
    let mut look = Look {
        width: view[2],
        height: view[3],
        title: String::new(),
        description: String::new(),
        seen: Vec::new(),
    };
    for node in root.descendants().filter(Node::is_element).skip(1) {
        assert!(node.attribute("style").is_none(), "a style attribute breaks a strict policy");
        let class = node.attribute("class").unwrap_or_default().to_owned();
        let n = |name| number(node, name);
        let tag = node.tag_name().name();
        let extent = match tag {
            "title" => {
                assert_eq!(node.attribute("id"), Some(format!("{id}-title").as_str()));
                look.title = node.text().unwrap_or_default().to_owned();
                continue;
            }
            "desc" => {
                assert_eq!(node.attribute("id"), Some(format!("{id}-desc").as_str()));
                look.description = node.text().unwrap_or_default().to_owned();
                continue;
            }
            "line" => {
                let (x, y) = ((n("x1"), n("x2")), (n("y1"), n("y2")));
                [x.0.min(x.1), y.0.min(y.1), x.0.max(x.1), y.0.max(y.1)]
            }
            "rect" => {
                assert!(n("width") >= 0.0 && n("height") >= 0.0, "{node:?} is turned inside out");
                [n("x"), n("y"), n("x") + n("width"), n("y") + n("height")]
            }
            "circle" => [n("cx") - n("r"), n("cy") - n("r"), n("cx") + n("r"), n("cy") + n("r")],
            "path" => match node.attribute("d").unwrap() {
                "" => continue,
                d => path_extent(d),
            },
            "text" => text_extent(node, &class),
            "g" => continue,
            other => panic!("an element {other:?}"),
        };
        assert!(!class.is_empty(), "{node:?} has no class, so no look");
        let text = node.text().unwrap_or_default().to_owned();
        look.seen.push(Seen { tag: tag.to_owned(), class, text, extent });
    }
    look
}

impl Look {
    /// Elements that reach outside the picture by more than a rounding.
    pub fn outside(&self) -> Vec<&Seen> {
        let outside = |e: &Extent| {
            e[0] < -0.02 || e[1] < -0.02 || e[2] > self.width + 0.02 || e[3] > self.height + 0.02
        };
        self.seen.iter().filter(|seen| outside(&seen.extent)).collect()
    }

    /// Pairs of texts that lie on each other.
    pub fn overlaps(&self) -> Vec<(&str, &str)> {
        let texts: Vec<&Seen> = self.seen.iter().filter(|seen| seen.tag == "text").collect();
        let mut found = Vec::new();
        for (index, one) in texts.iter().enumerate() {
            for other in &texts[index + 1..] {
                let (a, b) = (one.extent, other.extent);
                if a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3] {
                    found.push((one.text.as_str(), other.text.as_str()));
                }
            }
        }
        found
    }
}
