//! Springs: turns, balance, wire, and what a test of the balance asks for.

use crate::inches;
use hangtrue_core::hang::overhead::{Curtain, Path};
use hangtrue_core::hang::spring::{
    A229, Advice, Balance, Behaves, DIVISOR, DIVISOR_THEORY, HAND_MOST, Pull, Turns, Wire,
    from_behaviour, from_pulls,
};
use hangtrue_core::hang::weight::Weight;
use hangtrue_core::profile::Door;
use hangtrue_core::{Length, Unit};
use hangtrue_golden::golden;
use std::fmt::Write as _;

fn curtain(height: Length) -> Curtain {
    let path = Path::new(height.to_mm() + 6.35, 76.2, 0.0);
    Curtain { path, panels: 8, height: height.to_mm(), offset: 25.4, thickness: 19.05 }
}

fn told(advice: Option<Advice>) -> String {
    advice.map_or_else(
        || "nothing".to_owned(),
        |it| {
            let holds = if it.holds() { ", holds" } else { "" };
            format!(
                "{} turns, {:.4} ± {:.4}, {:?}{holds}",
                it.turns, it.exact, it.uncertainty, it.mismatch
            )
        },
    )
}

#[test]
fn what_a_balance_is_is_what_it_was() {
    let mut text = String::new();
    for (height, kg, drum, preload) in [
        ("90", 60, None, None),
        ("102 1/2", 85, None, Some(2.0)),
        ("78", 40, Some("12"), None),
        ("96", 70, Some("2"), Some(21.0)),
        ("96", 70, Some("3"), Some(20.0)),
        ("96", 70, Some("60"), Some(0.0)),
        ("96", 70, Some("61"), Some(-1.0)),
    ] {
        let travel = inches(height);
        let door = Door {
            drum_circumference: drum.map(inches),
            preload_turns: preload,
            ..Door::default()
        };
        let turns = Turns::of(travel, Some(&door));
        let balance = Balance::ideal(Weight::from_grams(kg * 1000), turns);
        let _ = writeln!(
            text,
            "{height} in, {kg} kg, drum {drum:?}, preload {preload:?}: {:?}, {:.4} turns, wind {}; \
             rate {:.5} N·m, torque {:.4}, a turn {:.4} N, open {:.4} N, energy {:.3} J, falls {}",
            turns.rule,
            turns.closed(),
            turns.to_wind(),
            balance.rate,
            balance.torque(),
            balance.per_turn(),
            balance.open(),
            balance.energy(),
            balance.falls_from(HAND_MOST).text(Unit::Millimetre),
        );
        let wound = balance.wound(turns.closed() - 2.5);
        for (name, balance) in [("as told", balance), ("2 1/2 turns less", wound)] {
            let hands = balance.points(&curtain(travel), 8);
            let hands = hands.iter().map(|point| format!("{:.2}", point.hand()));
            let _ = writeln!(text, "  {name}, hand {} N", hands.collect::<Vec<_>>().join(" "));
        }
    }
    for (wire, outside, coils) in [
        ("0.25", "2 1/2", 90.0),
        ("0.225", "2.2250", 62.5),
        ("6 mm", "18 mm", 1.0),
        ("6 mm", "17 mm", 50.0),
        ("20 mm", "100 mm", 2000.0),
        ("20.1 mm", "100 mm", 20.0),
        ("5 mm", "60 mm", 2000.5),
        ("5 mm", "60 mm", 0.9),
    ] {
        let spring = Wire::measured(inches(wire), inches(outside), coils);
        let figures = spring.map(|it| {
            format!(
                "{:.5} m, rate {:.6} N·m or {:.6}, stress at 20 N·m {:.4e} Pa, strength {:.4e} Pa",
                it.coil,
                it.rate(DIVISOR),
                it.rate(DIVISOR_THEORY),
                it.stress(20.0),
                it.strength(A229),
            )
        });
        let _ = writeln!(text, "wire {wire}, {outside}, {coils}: {figures:?}");
    }
    let _ = writeln!(text, "straight ends {:.6}", Wire::active(90.0, [2.5, 4.0], 2.25));
    golden("hang/springs.txt", &text);
}

#[test]
fn what_a_test_of_the_balance_asks_for_is_what_it_asked_for() {
    let mut text = String::new();
    let travel = inches("90");
    let turns = Turns::of(travel, None);
    let ideal = Balance::ideal(Weight::from_grams(60_000), turns);
    let curtain = curtain(travel);
    let newtons = |n: Option<f64>| n.map(Weight::from_newtons);
    let nothing: [(f64, Option<f64>, Option<f64>); 0] = [];
    for pulls in [
        &nothing[..],
        &[(0.2, None, None)],
        &[(0.2, Some(50.0), Some(20.0))],
        &[(0.2, Some(50.0), None)],
        &[(0.2, None, Some(50.0))],
        &[(0.2, Some(3.0), Some(2.0))],
        &[(0.2, Some(80.0), Some(60.0)), (0.75, Some(90.0), Some(70.0))],
        &[
            (0.2, Some(160.0), Some(140.0)),
            (0.5, Some(60.0), None),
            (0.75, Some(-90.0), Some(-99.0)),
        ],
        &[
            (0.75, Some(160.0), Some(140.0)),
            (0.5, Some(60.0), None),
            (0.2, Some(-90.0), Some(-99.0)),
        ],
        &[(0.5, Some(900.0), Some(20.0)), (0.5, Some(40.0), Some(20.0))],
        &[(0.2, Some(100.0), None), (0.75, Some(60.0), None)],
        &[(0.2, Some(120.0), None), (0.75, Some(60.0), None)],
        &[(0.2, Some(140.0), None), (0.75, Some(60.0), None)],
        &[(0.2, Some(400.0), None), (0.75, Some(300.0), None)],
        &[(0.2, None, Some(60.0)), (0.75, None, Some(120.0))],
        &[(0.2, None, Some(60.0)), (0.75, None, Some(160.0))],
    ] {
        let read: Vec<Pull> = pulls
            .iter()
            .map(|(share, up, down)| Pull {
                lift: Length::from_mm_f64(travel.to_mm() * share),
                up: newtons(*up),
                down: newtons(*down),
            })
            .collect();
        for (name, balance) in [("ideal", ideal), ("2 turns less", ideal.wound(10.0))] {
            let advice = from_pulls(&balance, &curtain, &read);
            let _ = writeln!(text, "{name} {pulls:?}: {}", told(advice));
        }
    }
    let none = Balance { rate: 0.0, ..ideal };
    let one = [Pull { lift: travel, up: Some(HAND_MOST), down: None }];
    let _ = writeln!(text, "no spring: {}", told(from_pulls(&none, &curtain, &one)));
    // So few turns that a third of what friction holds is no quarter of one.
    let short = Balance::ideal(Weight::from_grams(20_000), Turns::of(inches("20"), None));
    let all = [None, Some(Behaves::Drops), Some(Behaves::Stays), Some(Behaves::Rises)];
    for low in all {
        for middle in all {
            for high in all {
                let seen = [low, middle, high];
                let [usual, few] = [ideal, short].map(|it| told(from_behaviour(&it, seen)));
                let _ = writeln!(text, "{seen:?}: {usual}; of 5 turns {few}");
            }
        }
    }
    let _ = writeln!(text, "no spring: {}", told(from_behaviour(&none, [all[1]; 3])));
    golden("hang/advice.txt", &text);
}
