//! Random markup, the same every time: what a view might write, in an order no view would.

/// A number from a seed (SplitMix64: Steele, Lea and Flood, "Fast splittable pseudorandom number
/// generators", 2014), so that a failure can be had again.
struct Dice(u64);

impl Dice {
    fn below(&mut self, limit: u64) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        (mixed ^ (mixed >> 31)) % limit
    }
}

/// The markup of a seed. Names are drawn from small sets, so that two of them have much in common;
/// an `id` stands at most once.
pub(crate) fn markup(seed: u64) -> String {
    let mut out = String::new();
    let mut ids = Vec::new();
    children(&mut Dice(seed), 4, false, &mut ids, &mut out);
    out
}

fn children(dice: &mut Dice, depth: u64, in_svg: bool, ids: &mut Vec<u64>, out: &mut String) {
    let mut was_text = false;
    for _ in 0..dice.below(6) {
        if !was_text && dice.below(3) == 0 {
            out.push_str(["one", " two ", "&lt;3&gt;", "&amp;"][dice.below(4) as usize]);
            was_text = true;
        } else {
            element(dice, depth, in_svg, ids, out);
            was_text = false;
        }
    }
}

fn element(dice: &mut Dice, depth: u64, in_svg: bool, ids: &mut Vec<u64>, out: &mut String) {
    let name = if in_svg {
        ["g", "path", "linearGradient", "text"][dice.below(4) as usize]
    } else {
        ["div", "section", "div", "ul", "svg", "input", "textarea"][dice.below(7) as usize]
    };
    out.push_str(&format!("<{name}"));
    let id = dice.below(30);
    if id < 10 && !ids.contains(&id) {
        ids.push(id);
        out.push_str(&format!(" id=\"i{id}\""));
    } else if id < 14 {
        out.push_str(&format!(" data-key=\"k{id}\""));
    }
    for attribute in ["class", "hidden", "aria-label", "viewBox"] {
        // HTML has no names with capitals; SVG has.
        let exists = attribute != "viewBox" || in_svg || name == "svg";
        if exists && dice.below(4) == 0 {
            let start = if attribute == "viewBox" { "0 0 9 " } else { "" };
            out.push_str(&format!(" {attribute}=\"{start}{}\"", dice.below(3)));
        }
    }
    match name {
        "input" => out.push_str(&format!(" value=\"{}\">", dice.below(3))),
        "textarea" => out.push_str(&format!(">{}</textarea>", dice.below(3))),
        _ => {
            out.push('>');
            if depth > 0 {
                children(dice, depth - 1, in_svg || name == "svg", ids, out);
            }
            out.push_str(&format!("</{name}>"));
        }
    }
}
