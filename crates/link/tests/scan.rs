//! Codes in pictures: as they are, reversed, coloured, larger than the reader can use.

#![allow(clippy::unwrap_used, reason = "a test may fail")]

use hangtrue_link::qr::{QUIET_ZONE, Qr, Surface};
use hangtrue_link::scan::Grey;

const LINK: &str = "https://dealer.example/#1V8009500Q1GSC02C00A0QK3PJ7";

type Rgba = [u8; 4];

/// A picture of one colour.
fn dot(colour: Rgba) -> Grey {
    Grey::of_rgba(1, 1, &colour).unwrap()
}

fn grey(shade: u8) -> Rgba {
    [shade, shade, shade, 255]
}

/// The code of `text`, `scale` dots a module; `colour` says what a dot at x, y is, by whether
/// its module is dark.
fn picture(text: &str, scale: usize, colour: impl Fn(bool, usize, usize) -> Rgba) -> Grey {
    let code = Qr::new(text, Surface::Screen).unwrap();
    let quiet = QUIET_ZONE as usize;
    let side = (code.size() as usize + 2 * quiet) * scale;
    let mut dots = Vec::new();
    for y in 0..side {
        for x in 0..side {
            let module = |at: usize| (at / scale).checked_sub(quiet).map(|at| at as u32);
            let dark = module(x).zip(module(y)).is_some_and(|(x, y)| code.dark(x, y));
            dots.extend(colour(dark, x, y));
        }
    }
    Grey::of_rgba(side, side, &dots).unwrap()
}

const BLACK: Rgba = [0, 0, 0, 255];
const WHITE: Rgba = [255, 255, 255, 255];

#[test]
fn a_code_is_read_in_any_two_colours() {
    for (dark, light) in [
        (BLACK, WHITE),
        (WHITE, BLACK),
        ([160, 0, 0, 255], WHITE),
        ([0, 0, 120, 255], [255, 220, 0, 255]),
        ([0, 0, 0, 255], [0, 0, 0, 0]),
    ] {
        let read = picture(LINK, 4, |is_dark, _, _| if is_dark { dark } else { light }).codes();
        assert_eq!(read, [LINK], "{dark:?} on {light:?}");
    }
}

/// Fine dots that the reader cannot use as they are: a quarter of a dark module's dots are
/// black, always the same corner of four.
#[test]
fn a_code_of_fine_dots_is_read_at_half_its_size() {
    for (right, below) in [(0, 0), (1, 0), (0, 1), (1, 1)] {
        let fine = |dark: bool, x: usize, y: usize| {
            if dark && x % 2 == right && y % 2 == below { BLACK } else { WHITE }
        };
        assert_eq!(picture(LINK, 12, fine).codes(), [LINK], "{right} {below}");
    }
}

/// The same at the size from which a picture is tried smaller, and a dot below it.
#[test]
fn a_picture_is_halved_from_four_hundred_dots() {
    let code = Qr::new(LINK, Surface::Screen).unwrap();
    for (side, read) in [(399, &[][..]), (400, &[LINK][..])] {
        let mut dots = Vec::new();
        for (y, x) in (0..side).flat_map(|y| (0..side).map(move |x| (y, x))) {
            let module = |at: usize| (at / 8).checked_sub(4).map(|at| at as u32);
            let dark = module(x).zip(module(y)).is_some_and(|(x, y)| code.dark(x, y));
            dots.extend(if dark && x % 2 == 0 && y % 2 == 0 { BLACK } else { WHITE });
        }
        assert_eq!(Grey::of_rgba(side, side, &dots).unwrap().codes(), read, "{side}");
    }
}

#[test]
fn a_picture_is_grey_as_television_has_it() {
    // ITU-R BT.601: 0.299 of red, 0.587 of green, 0.114 of blue.
    for (colour, shade) in [
        ([255, 0, 0, 255], 76),
        ([0, 255, 0, 255], 149),
        ([0, 0, 255, 255], 28),
        ([255, 255, 0, 255], 226),
        (WHITE, 255),
        (BLACK, 0),
        // What is not opaque stands on white.
        ([0, 0, 0, 0], 255),
        ([255, 0, 0, 0], 255),
        ([0, 0, 0, 128], 127),
        ([100, 100, 100, 51], 224),
    ] {
        assert_eq!(dot(colour), dot(grey(shade)), "{colour:?}");
    }
}

#[test]
fn a_picture_without_a_code_or_of_another_size_has_none() {
    let white = |side: usize| Grey::of_rgba(side, side, &vec![255; side * side * 4]).unwrap();
    for side in [0, 1, 20, 21, 64, 401] {
        assert_eq!(white(side).codes(), [""; 0], "{side}");
    }
    // Of any shape, and of any dots.
    for (width, height) in [(0, 9), (9, 0), (1, 900), (900, 1), (2, 3), (3, 2), (7, 500), (20, 20)]
    {
        for turn in [0_u32, 1, 3, 7919] {
            let shade = |at: u32| if at.wrapping_mul(turn) >> 2 & 1 == 0 { BLACK } else { WHITE };
            let dots: Vec<u8> = (0..width * height).flat_map(shade).collect();
            let picture = Grey::of_rgba(width as usize, height as usize, &dots).unwrap();
            assert_eq!(picture.codes(), [""; 0], "{width} {height} {turn}");
        }
    }
    assert_eq!(Grey::of_rgba(2, 2, &[0; 15]), None);
    assert_eq!(Grey::of_rgba(2, 2, &[0; 17]), None);
    assert_eq!(Grey::of_rgba(usize::MAX, 2, &[]), None);
    assert_eq!(Grey::of_rgba(usize::MAX / 2, 2, &[]), None);
}

/// All the codes of one picture, side by side.
#[test]
fn two_codes_are_both_read() {
    let texts = [LINK, "https://dealer.example/#2V8009500Q1GSC02C00A0QK3PJ7"];
    let codes = texts.map(|text| Qr::new(text, Surface::Screen).unwrap());
    let side = codes[0].size() as usize + 8;
    let scale = 4;
    let (width, height) = (2 * side * scale, side * scale);
    let mut dots = Vec::new();
    for y in 0..height {
        for x in 0..width {
            let (x, y) = (x / scale, y / scale);
            let module = |at: usize| at.checked_sub(4).map(|at| at as u32);
            let place = module(x % side).zip(module(y));
            let code = &codes[x / side];
            let dark = place.is_some_and(|(x, y)| code.dark(x, y));
            dots.extend(if dark { BLACK } else { WHITE });
        }
    }
    let mut read = Grey::of_rgba(width, height, &dots).unwrap().codes();
    read.sort();
    assert_eq!(read, texts);
}
