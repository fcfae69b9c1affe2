//! `hangtrue compare`: two orders for one truck.

use std::process::ExitCode;

use hangtrue_core::check::{Report, Verdict};
use hangtrue_core::compare::{Item as Compared, Row, Standing, numbers, readings};
use hangtrue_core::say::{Speaker, capital};
use hangtrue_core::{Length, Spot, Survey, Unit};
use serde::Serialize;

use super::exit;
use crate::args;
use crate::input::{Content, one};
use crate::out::Out;
use crate::rules::{Rules, speaker};
use crate::style::{FAINT, PLAIN, STRONG, of};
use crate::table::{Cell, Table};
use crate::words;

/// One thing that both may have.
#[derive(Serialize)]
struct Told {
    /// `number`, `reading`, or `order` for what goes with it.
    kind: &'static str,
    /// Which: `width`, `width.low`, `vehicle`.
    item: String,
    /// Which of the readings there, from 0.
    #[serde(skip_serializing_if = "Option::is_none")]
    index: Option<usize>,
    /// `apart`, `one-only`, `close` or `same`.
    standing: &'static str,
    first: Option<Value>,
    second: Option<Value>,
    /// First less second.
    #[serde(skip_serializing_if = "Option::is_none")]
    difference: Option<Value>,
    /// The slip that would explain it.
    #[serde(skip_serializing_if = "Option::is_none")]
    slip: Option<&'static str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    says: Option<&'static str>,
    #[serde(skip)]
    name: String,
}

impl Told {
    fn differs(&self) -> bool {
        matches!(self.standing, "apart" | "one-only")
    }
}

#[derive(Serialize)]
struct Value {
    #[serde(skip_serializing_if = "Option::is_none")]
    nm: Option<i64>,
    text: String,
}

pub(crate) fn run(args: args::Compare, out: &mut Out) -> anyhow::Result<ExitCode> {
    let rules = Rules::of(args.profile.as_deref())?;
    let [a, b] = [opened(&args.a, &rules)?, opened(&args.b, &rules)?];
    let mut rows = Vec::new();
    let pair = |side: &(Content, Report)| side.0.order.survey.unit;
    for row in numbers((&a.1, pair(&a)), (&b.1, pair(&b))) {
        rows.push(told(&row, &a.0, &b.0));
    }
    for row in readings(&a.0.order.survey, &b.0.order.survey) {
        rows.push(told(&row, &a.0, &b.0));
    }
    rows.extend(details(&a, &b));
    let different = rows.iter().any(Told::differs);
    if args.differences {
        rows.retain(Told::differs);
    }
    if !out.is_table() {
        for row in &rows {
            out.json(row)?;
        }
        return Ok(exit(different));
    }
    let mut first = true;
    for (kind, title) in
        [("number", "Ordered numbers"), ("reading", "Readings"), ("order", "With the order")]
    {
        let mut table = Table::new([title, "first", "second", "difference", "likely"]);
        let mut any = false;
        for row in rows.iter().filter(|row| row.kind == kind) {
            any = true;
            table.push(cells(row));
        }
        if any {
            if !core::mem::take(&mut first) {
                out.text("\n")?;
            }
            out.rows(&mut table)?;
        }
    }
    let says = verdict(&rows, different);
    out.text(&if first { says } else { ["\n", &says].concat() })?;
    Ok(exit(different))
}

/// How the two stand to each other, in a sentence.
fn verdict(rows: &[Told], different: bool) -> String {
    let differs = |kind| rows.iter().any(|told| told.kind == kind && told.differs());
    let says = if differs("number") {
        "The ordered numbers differ."
    } else if rows.iter().any(|told| told.kind == "reading" && told.standing == "apart") {
        "The ordered numbers agree; readings differ."
    } else if rows.iter().any(|told| told.kind == "order" && told.standing == "apart") {
        "The ordered numbers agree; what goes with them differs."
    } else if different {
        "The ordered numbers agree; not everything is in both."
    } else {
        "They agree."
    };
    says.to_owned() + "\n"
}

fn opened(argument: &str, rules: &Rules) -> anyhow::Result<(Content, Report)> {
    let content = one(argument, rules.profile())?;
    let report = rules.report(&content);
    Ok((content, report))
}

fn told(row: &Row, a: &Content, b: &Content) -> Told {
    let Row { item, first, second, standing, slip } = *row;
    let (a_unit, b_unit) = (a.order.survey.unit, b.order.survey.unit);
    let value =
        |length: Length, unit: Unit| Value { nm: Some(length.nm()), text: length.text(unit) };
    let speaker = speaker(a);
    let (kind, key, index, name) = match item {
        Compared::Number(dimension) => {
            ("number", dimension.key().to_owned(), None, capital(speaker.dimension(dimension)))
        }
        Compared::Reading(spot, index) => {
            ("reading", spot.key(), Some(index), reading_name(speaker, spot, index))
        }
    };
    let apart = matches!(standing, Standing::Apart | Standing::Close);
    let difference = row.difference().filter(|_| apart).map(|length| value(length, a_unit));
    Told {
        kind,
        item: key,
        index,
        standing: match standing {
            Standing::Apart => "apart",
            Standing::OneOnly => "one-only",
            Standing::Close => "close",
            Standing::Same => "same",
        },
        first: first.map(|length| value(length, a_unit)),
        second: second.map(|length| value(length, b_unit)),
        difference,
        slip: slip.map(|slip| slip.key()),
        says: slip.map(words::slip).filter(|says| !says.is_empty()),
        name,
    }
}

fn reading_name(speaker: Speaker, spot: Spot, index: usize) -> String {
    let name = capital(speaker.spot(spot));
    if index == 0 { name } else { format!("{name}, repeat {index}") }
}

/// What goes with the numbers and is not the same in both.
fn details(a: &(Content, Report), b: &(Content, Report)) -> Vec<Told> {
    let yes = |is: bool| if is { "yes" } else { "no" }.to_owned();
    let details = |(content, report): &(Content, Report)| {
        let order = &content.order;
        let answers = order.answers.iter().map(|one| [&one.question, ": ", &one.answer].concat());
        let rules = order.profile.as_ref();
        [
            order.survey.unit.key().to_owned(),
            report.verdict.key().to_owned(),
            yes(order.survey.prepared),
            order.old_door_in.map(yes).unwrap_or_default(),
            unread(&order.survey).join(", "),
            answers.collect::<Vec<_>>().join(", "),
            rules
                .map(|(name, revision)| format!("{name}, revision {revision}"))
                .unwrap_or_default(),
            order.vehicle.clone(),
            order.note.clone(),
            order.contact.clone(),
        ]
    };
    let names = [
        ("unit", "Unit"),
        ("verdict", "Verdict"),
        ("prepared", "Frame as it will stay"),
        ("old_door_in", "Old door still in"),
        ("unreadable", "Could not be read"),
        ("answers", "Answers"),
        ("profile", "Rules"),
        ("vehicle", "Vehicle"),
        ("note", "Note"),
        ("contact", "Contact"),
    ];
    let value = |text: String| (!text.is_empty()).then_some(Value { nm: None, text });
    names
        .into_iter()
        .zip(details(a).into_iter().zip(details(b)))
        .filter(|(_, (a, b))| a != b)
        .map(|((item, name), (a, b))| Told {
            kind: "order",
            item: item.to_owned(),
            index: None,
            // Another unit is another way to write the same.
            standing: match (item, a.is_empty() || b.is_empty()) {
                ("unit", _) => "close",
                (_, true) => "one-only",
                (_, false) => "apart",
            },
            first: value(a),
            second: value(b),
            difference: None,
            slip: None,
            says: None,
            name: name.to_owned(),
        })
        .collect()
}

/// The readings that are no length, and where they stand.
fn unread(survey: &Survey) -> Vec<String> {
    let all = Spot::ALL
        .into_iter()
        .flat_map(|spot| survey.entries(spot).iter().map(move |entry| (spot, entry)));
    let wrong = all.filter(|(_, entry)| !entry.struck && entry.read.is_err());
    wrong.map(|(spot, entry)| [&spot.key(), ": ", &entry.text].concat()).collect()
}

fn cells(told: &Told) -> [Cell; 5] {
    let style = match told.standing {
        "apart" => of(Verdict::Stop),
        "one-only" => of(Verdict::Recheck),
        "close" => PLAIN,
        _ => FAINT,
    };
    let text = |value: &Option<Value>| value.as_ref().map_or("—", |value| &value.text).to_owned();
    let difference = told.difference.as_ref().map(|value| value.text.clone());
    let difference = match (told.standing, difference) {
        ("same", _) => "same".to_owned(),
        ("one-only", _) => "only one has it".to_owned(),
        (_, difference) => difference.unwrap_or_default(),
    };
    let likely =
        told.says.unwrap_or(if told.standing == "close" { "the same, read again" } else { "" });
    [
        Cell::new(told.name.clone(), style),
        Cell::new(text(&told.first), if told.standing == "same" { FAINT } else { STRONG }),
        Cell::new(text(&told.second), if told.standing == "same" { FAINT } else { STRONG }),
        difference.into(),
        likely.into(),
    ]
}
