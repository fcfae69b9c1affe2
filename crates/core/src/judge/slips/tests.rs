//! What every slip offers, and what is taken for a slip.

use super::*;
use hangtrue_golden::golden;

#[test]
fn a_slip_offers_no_more_than_it_has() {
    for slip in &SLIPS {
        for sixteenths in [1475, 1472, 1480, 152, 20] {
            for (value, share) in testing::values(slip, Group::Width, sixteenths) {
                assert!(share > 0.0 && share <= 1.0, "{:?} {value} {share}", slip.kind);
            }
        }
    }
}

/// What each slip takes some readings for, `HANGTRUE_BLESS=1` writes it anew.
#[test]
fn what_was_meant_is_what_it_was() {
    let mut text = String::new();
    let figure = |value: f64| format!("{value:.3e}");
    for (read, group) in [
        ("96 3/16 in", Group::Width),
        ("110 1/2 in", Group::Height),
        ("100 in", Group::Diagonal),
        ("9 1/2 in", Group::Header),
        ("1 1/4 in", Group::Bow),
        ("8 ft 0 1/2 in", Group::Width),
        ("9614 in", Group::Width),
        ("96316 in", Group::Width),
        ("96.14 in", Group::Width),
        ("96 17/32 in", Group::Loop),
        ("0 3/8 in", Group::Bow),
        ("24 in", Group::Height),
        ("2343 mm", Group::Width),
        ("100 mm", Group::Header),
        ("32 mm", Group::Bow),
        ("2734.5 mm", Group::Loop),
    ] {
        let unit = if read.ends_with("mm") { Unit::Millimetre } else { Unit::Inch };
        let length = crate::length::read(read, unit).unwrap();
        let bow = (group != Group::Loop).then(|| Length::from_sixteenths(20));
        let written = Written { group, length, unit, feet: read.contains("ft"), bow };
        let mut last = None;
        meant(&written, |slip, candidate, weight| {
            if last.replace(slip) != Some(slip) {
                text += &format!("\n{read} at {}, {}:", group.key(), slip.key());
            }
            text += &match candidate {
                Candidate::Value(value, _) => {
                    format!(" {} {},", value.text(unit), figure(weight))
                }
                Candidate::Shift(least, most, _) => {
                    format!(" {least:.1} to {most:.1} mm {},", figure(weight))
                }
            };
        });
    }
    golden("judge/slips.txt", text.trim_start());
}

/// The likeliest slip between what was sent and what was heard, likewise.
#[test]
fn what_was_between_is_what_it_was() {
    let mut text = String::new();
    let read = |text: &str, unit| crate::length::read(text, unit).unwrap();
    let inches = [
        (
            Group::Width,
            "92 3/16",
            "29 3/16|93 3/16|92 3/8|92|92 13/16|82 3/16|80 3/16|9|923|\
            99 3/16|92 11/16|95 3/16|91 3/16|92 1/4|92 1/8|52 3/16|92 7/16|93 7/8|96|98 3/16|\
            90 3/16|85 3/16|104 3/16|102 3/16|92 15/16",
        ),
        (Group::Width, "95", "99|59|94|96|93 3/8|93 1/2|97|98|83|98 1/2|95 3/8|94 7/8|105|85"),
        (Group::Width, "15", "50|51|5|16|14 5/8|13|14"),
        (
            Group::Height,
            "101 1/2",
            "110 1/2|101|101 1/4|100 1/2|102 1/2|11 1/2|103 1/2|104|99|\
            101 5/8|113 1/2|89 1/2|111 1/2|101 3/4",
        ),
        (Group::Header, "9 1/2", "8 1/4|9|5 1/2|10 1/2|9 5/8|8 1/2|9 7/8|10 1/4|8"),
        (Group::Bow, "1 1/4", "2 1/4|1|1 1/2|11 1/4|1 1/8|1 7/8|3/4|4"),
    ];
    let metric = [
        (Group::Width, "2343", "2434|2334|2443|234|234.3|2344|2348|2393|23430|2243|2363|2328"),
        (Group::Header, "241", "214|24|210|209|261|251|341|24.1"),
    ];
    for (unit, all) in [(Unit::Inch, &inches[..]), (Unit::Millimetre, &metric[..])] {
        for (group, should, heard) in all {
            for written in heard.split('|') {
                let slip = |way, bow| {
                    let (written, should) = (read(written, unit), read(should, unit));
                    between(written, should, *group, unit, bow, way).map_or("–", SlipKind::key)
                };
                let bow = Some(Length::from_sixteenths(20));
                text += &format!(
                    "{} {written} for {should}: said {}, read {}, without a bow {}\n",
                    group.key(),
                    slip(Way::Said, bow),
                    slip(Way::Read, bow),
                    slip(Way::Read, None),
                );
            }
        }
    }
    golden("judge/between.txt", &text);
}

#[test]
fn digits_come_last_first() {
    assert_eq!(digits(187).collect::<Vec<_>>(), [(1, 7), (10, 8), (100, 1)]);
    assert_eq!(digits(0).collect::<Vec<_>>(), [(1, 0)]);
}
