//! A record as its file is written.

use hangtrue_core::check;
use hangtrue_core::hang::care::Service;
use hangtrue_core::hang::inspection::{Check, Found};
use hangtrue_core::hang::record::{Place, QuarterTurns, Record};
use hangtrue_core::profile::Profile;

use super::FORMAT;
use crate::json::Id;
use crate::json::order::{OrderFile, written_date};
use crate::json::text::{Entry, Node, Number, Value, print};

/// The file of `record`, on one line.
#[must_use]
pub fn text(record: &Record) -> String {
    let report = check(&record.order.survey, &Profile::default());
    let order = OrderFile::new(Id::None, &record.order, &report);
    let mut all = vec![entry("format", Node::text(FORMAT)), entry("order", order.tree())];
    if !record.serial.is_empty() {
        all.push(entry("serial", Node::text(record.serial.as_str())));
    }
    if let Some(hung) = record.hung {
        all.push(entry("hung", Node::text(written_date(hung))));
    }
    if let Some(per_day) = record.per_day {
        all.push(entry("per_day", number(i64::from(per_day))));
    }
    if let Some(weight) = record.weight {
        all.push(entry("weight_micrograms", number(weight.micrograms())));
    }
    if let Some(QuarterTurns(quarters)) = record.turns {
        all.push(entry("quarter_turns", number(i64::from(quarters))));
    }
    if !record.built.is_empty() {
        let typed = Place::ALL.into_iter().filter(|place| !record.built.text(*place).is_empty());
        let typed = typed.map(|place| entry(place.key(), Node::text(record.built.text(place))));
        all.push(entry("readings", object(typed.collect())));
    }
    if record.inspection.done() > 0 {
        let unit = record.order.survey.unit;
        let found = Check::ALL.into_iter().filter_map(|check| {
            let node = match record.inspection.get(check)? {
                Found::Length(length) => Node::text(length.canonical(unit)),
                Found::Weight(weight) => number(weight.micrograms()),
                Found::Count(count) => number(i64::from(count)),
                Found::Eye(in_order) => Value::Bool(in_order).into(),
            };
            Some(entry(check.key(), node))
        });
        all.push(entry("inspection", object(found.collect())));
    }
    if !record.services.is_empty() {
        let services = record.services.iter().map(service).collect();
        all.push(entry("services", Value::List(services).into()));
    }
    print(&object(all))
}

fn service(service: &Service) -> Node<'_> {
    let mut all = vec![
        entry("date", Node::text(written_date(service.date))),
        entry("work", Node::text(service.work.key())),
    ];
    if !service.note.is_empty() {
        all.push(entry("note", Node::text(service.note.as_str())));
    }
    object(all)
}

fn entry<'a>(key: &'static str, node: Node<'a>) -> Entry<'a> {
    Entry { key: key.into(), node }
}

fn object(entries: Vec<Entry<'_>>) -> Node<'_> {
    Value::Object(entries).into()
}

fn number(value: i64) -> Node<'static> {
    Value::Number(Number::from(value)).into()
}
