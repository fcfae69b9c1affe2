//! A small writer of SVG: it rounds, escapes and closes.
//!
//! Nothing here sets a colour, a stroke or a font: that is the stylesheet's
//! (`web/style/drawing.css`), so a strict content security policy holds and a
//! dark scheme needs no second picture.

use crate::glyph::Size;
use crate::number::{push_hundredths, push_number};
use crate::point::Point;
use crate::rect::Rect;
use crate::sheet::Sheet;

/// Which part of a text stands at its place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Anchor {
    /// Its beginning.
    Start,
    /// Its middle.
    Middle,
    /// Its end.
    End,
}

/// A picture being written.
pub(crate) struct Svg {
    out: String,
}

impl Svg {
    /// Opens a picture of `width` by `height` units that says `title` and `description`
    /// to whom cannot see it. `class` is added to the picture's own.
    pub(crate) fn new(
        sheet: Sheet<'_>,
        class: &str,
        (width, height): (f64, f64),
        title: &str,
        description: &str,
    ) -> Self {
        let mut svg = Self { out: String::with_capacity(4096) };
        svg.raw("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drawing ");
        svg.escaped(class);
        svg.raw("\" viewBox=\"0 0");
        svg.number(" ", width);
        svg.number(" ", height);
        svg.raw("\" role=\"img\" aria-labelledby=\"");
        svg.escaped(sheet.id);
        svg.raw("-title\" aria-describedby=\"");
        svg.escaped(sheet.id);
        svg.raw("-desc\"><title id=\"");
        svg.escaped(sheet.id);
        svg.raw("-title\">");
        svg.escaped(title);
        svg.raw("</title><desc id=\"");
        svg.escaped(sheet.id);
        svg.raw("-desc\">");
        svg.escaped(description);
        svg.raw("</desc>");
        svg
    }

    /// Closes the picture.
    pub(crate) fn finish(mut self) -> String {
        self.raw("</svg>");
        self.out
    }

    pub(crate) fn line(&mut self, class: &str, from: Point, to: Point) {
        self.raw("<line");
        self.class(class);
        self.attribute(" x1", from.x);
        self.attribute(" y1", from.y);
        self.attribute(" x2", to.x);
        self.attribute(" y2", to.y);
        self.raw("/>");
    }

    pub(crate) fn rect(&mut self, class: &str, rect: Rect) {
        self.round_rect(class, rect, 0.0);
    }

    pub(crate) fn round_rect(&mut self, class: &str, rect: Rect, radius: f64) {
        self.raw("<rect");
        self.class(class);
        self.attribute(" x", rect.left);
        self.attribute(" y", rect.top);
        self.attribute(" width", rect.width());
        self.attribute(" height", rect.height());
        if radius > 0.0 {
            self.attribute(" rx", radius);
        }
        self.raw("/>");
    }

    pub(crate) fn circle(&mut self, class: &str, center: Point, radius: f64) {
        self.raw("<circle");
        self.class(class);
        self.attribute(" cx", center.x);
        self.attribute(" cy", center.y);
        self.attribute(" r", radius);
        self.raw("/>");
    }

    /// A path through what `trace` puts in it.
    pub(crate) fn path(&mut self, class: &str, trace: impl FnOnce(&mut Path<'_>)) {
        self.raw("<path");
        self.class(class);
        self.raw(" d=\"");
        trace(&mut Path { out: &mut self.out });
        self.raw("\"/>");
    }

    /// One line of text, its middle at the height of `at`.
    pub(crate) fn text(&mut self, class: &str, size: Size, anchor: Anchor, at: Point, text: &str) {
        self.raw("<text class=\"");
        self.raw(size.class());
        if !class.is_empty() {
            self.raw(" ");
            self.raw(class);
        }
        self.raw("\"");
        self.attribute(" x", at.x);
        self.attribute(" y", at.y + size.drop());
        self.raw(match anchor {
            Anchor::Start => ">",
            Anchor::Middle => " text-anchor=\"middle\">",
            Anchor::End => " text-anchor=\"end\">",
        });
        self.escaped(text);
        self.raw("</text>");
    }

    fn class(&mut self, class: &str) {
        self.raw(" class=\"");
        self.escaped(class);
        self.raw("\"");
    }

    fn attribute(&mut self, name: &str, value: f64) {
        self.raw(name);
        self.raw("=\"");
        push_number(&mut self.out, value);
        self.raw("\"");
    }

    fn number(&mut self, before: &str, value: f64) {
        self.raw(before);
        push_number(&mut self.out, value);
    }

    fn raw(&mut self, markup: &str) {
        self.out.push_str(markup);
    }

    /// Text and attribute values alike: the five characters that mean something
    /// in XML, and nothing that XML 1.0 does not allow at all.
    fn escaped(&mut self, text: &str) {
        for letter in text.chars() {
            match letter {
                '&' => self.raw("&amp;"),
                '<' => self.raw("&lt;"),
                '>' => self.raw("&gt;"),
                '"' => self.raw("&quot;"),
                '\'' => self.raw("&#39;"),
                '\u{fffe}' | '\u{ffff}' => self.raw("\u{fffd}"),
                control if control.is_control() => self.raw("\u{fffd}"),
                other => self.out.push(other),
            }
        }
    }
}

/// The `d` of a path.
pub(crate) struct Path<'a> {
    out: &'a mut String,
}

impl Path<'_> {
    fn command(&mut self, letter: char, points: &[Point]) -> &mut Self {
        self.out.push(letter);
        for (index, point) in points.iter().enumerate() {
            if index > 0 {
                self.out.push(' ');
            }
            push_number(self.out, point.x);
            self.out.push(' ');
            push_number(self.out, point.y);
        }
        self
    }

    /// Starts at `to`.
    pub(crate) fn start(&mut self, to: Point) -> &mut Self {
        self.command('M', &[to])
    }

    /// A straight to `to`.
    pub(crate) fn line(&mut self, to: Point) -> &mut Self {
        self.command('L', &[to])
    }

    /// A curve bent towards `control`.
    pub(crate) fn curve(&mut self, control: Point, to: Point) -> &mut Self {
        self.command('Q', &[control, to])
    }

    /// Back to where this part started.
    pub(crate) fn close(&mut self) -> &mut Self {
        self.out.push('Z');
        self
    }

    /// An upright stroke at `x`, in hundredths of a unit, from `top` down by `length`.
    pub(crate) fn mark(&mut self, x_hundredths: i64, top: i64, length: i64) -> &mut Self {
        self.out.push('M');
        push_hundredths(self.out, x_hundredths);
        self.out.push(' ');
        push_hundredths(self.out, top.saturating_mul(100));
        self.out.push('v');
        push_hundredths(self.out, length.saturating_mul(100));
        self
    }

    /// All of `points`, one after the other.
    pub(crate) fn polyline(&mut self, points: &[Point]) -> &mut Self {
        for (index, point) in points.iter().enumerate() {
            self.command(if index == 0 { 'M' } else { 'L' }, &[*point]);
        }
        self
    }
}
