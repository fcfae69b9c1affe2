//! `hangtrue-survey/1`: what was typed, place by place.

use hangtrue_core::{Survey, Unit};

use super::error::{Fault, FileError, NodeKind};
use super::id::Id;
use super::readings::{self, Places};
use super::text::Node;
use super::walk::{self, At};

/// The format's name, in `"format"`.
pub const FORMAT: &str = "hangtrue-survey/1";

/// A survey as it came in.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Request {
    /// What the sender calls it.
    pub id: Id,
    /// The readings.
    pub survey: Survey,
}

/// Reads one survey.
///
/// # Errors
/// The first thing that is not as the format says, with the place, and with the
/// id as far as it could be made out.
pub fn parse(text: &str) -> Result<Request, (Id, FileError)> {
    let node = walk::document(text).map_err(|error| (Id::None, error))?;
    let id = id(&node);
    match survey(&node) {
        Ok(survey) => Ok(Request { id, survey }),
        Err(error) => Err((id, error)),
    }
}

/// The id, whatever the rest is like.
pub(super) fn id(node: &Node<'_>) -> Id {
    node.get("id").and_then(Id::of).unwrap_or_default()
}

/// What surveys and orders begin with: the `format`, which is `expected`, an id, and the unit of bare
/// numbers, which is returned.
pub(super) fn head<'n, 'a>(
    root: &'n At<'n, 'a>,
    expected: &'static str,
    [format, id, unit]: [Option<&'n Node<'a>>; 3],
) -> Result<Unit, FileError> {
    root.format(format, expected)?;
    if let Some(id) = id
        && Id::of(id).is_none()
    {
        let fault = Fault::Kind { expected: NodeKind::Text, found: id.into() };
        return Err(root.child("id", id).error(fault));
    }
    root.required("unit", unit)?.choice(&["in", "mm"], Unit::from_key)
}

pub(super) fn survey(node: &Node<'_>) -> Result<Survey, FileError> {
    let root = At::root(node);
    let [format, id, unit, prepared, readings] =
        root.object(["format", "id", "unit", "prepared", "readings"])?;
    let mut survey = Survey::new(head(&root, FORMAT, [format, id, unit])?);
    if let Some(prepared) = prepared {
        survey.prepared = root.child("prepared", prepared).bool()?;
    }
    readings::read(&root.required("readings", readings)?, Places::Texts, &mut survey)?;
    Ok(survey)
}

#[cfg(test)]
mod tests {
    use super::*;
    use hangtrue_core::Spot;
    use hangtrue_core::say::Language;
    use proptest::prelude::*;

    const DEMO: &str = r#"{"format":"hangtrue-survey/1","id":"demo-1","unit":"in","prepared":true,
        "readings":{"width":{"low":"92","middle":["93","92"],"high":[]},"loop":{"sill_to_bow":"109"},
        "post":{"left":"3","right":"whatever"}}}"#;

    #[test]
    fn a_survey_keeps_every_text_at_its_place() {
        let Request { id, survey } = parse(DEMO).unwrap();
        assert_eq!(id, Id::Text("demo-1".to_owned()));
        assert_eq!((survey.unit, survey.prepared), (Unit::Inch, true));
        let texts = |spot| survey.entries(spot).iter().map(|e| e.text.as_str()).collect::<Vec<_>>();
        assert_eq!(texts(Spot::WidthLow), ["92"]);
        assert_eq!(texts(Spot::WidthMiddle), ["93", "92"]);
        assert!(texts(Spot::WidthHigh).is_empty() && texts(Spot::HeightLeft).is_empty());
        assert_eq!(texts(Spot::LoopSillToBow), ["109"]);
        // Unreadable text is data: the check says so, the file reader does not.
        assert_eq!(texts(Spot::PostRight), ["whatever"]);
        assert!(survey.entries(Spot::PostRight)[0].read.is_err());
    }

    #[test]
    fn each_thing_that_is_not_as_the_format_says_is_named_with_its_place() {
        let cases: [(&str, &str, &str); 17] = [
            ("oops", "not-json", "This line is not JSON: a value is expected at column 1."),
            ("[]", "wrong-type", "The input is a list; an object is expected."),
            ("{}", "missing-key", "The input has no \"format\"."),
            (
                r#"{"format":"hangtrue-survey/2"}"#,
                "unknown-value",
                "format is \"hangtrue-survey/2\". It can be: hangtrue-survey/1.",
            ),
            (
                r#"{"format":"hangtrue-survey/1","readings":{}}"#,
                "missing-key",
                "The input has no \"unit\".",
            ),
            (
                r#"{"format":"hangtrue-survey/1","unit":"cm","readings":{}}"#,
                "unknown-value",
                "unit is \"cm\". It can be: in, mm.",
            ),
            (
                r#"{"format":"hangtrue-survey/1","unit":"in"}"#,
                "missing-key",
                "The input has no \"readings\".",
            ),
            (
                r#"{"format":"hangtrue-survey/1","unit":"in","unit":"mm","readings":{}}"#,
                "double-key",
                "The input has \"unit\" twice.",
            ),
            (
                r#"{"format":"hangtrue-survey/1","unit":"in","prepared":"yes","readings":{}}"#,
                "wrong-type",
                "prepared is a text; true or false is expected.",
            ),
            (
                r#"{"format":"hangtrue-survey/1","unit":"in","readings":{},"note":""}"#,
                "unknown-key",
                "The input has a key \"note\" that is not known. Known are: format, id, unit, \
                 prepared, readings.",
            ),
            (
                r#"{"format":"hangtrue-survey/1","unit":"in","readings":{"depth":{}}}"#,
                "unknown-key",
                "readings has a key \"depth\" that is not known. Known are: width, height, \
                 header, bow, diagonal, loop, post.",
            ),
            (
                r#"{"format":"hangtrue-survey/1","unit":"in","readings":{"height":{"low":"9"}}}"#,
                "unknown-key",
                "readings.height has a key \"low\" that is not known. Known are: left, center, \
                 right.",
            ),
            (
                r#"{"format":"hangtrue-survey/1","unit":"in","readings":{"post":{"":"9"}}}"#,
                "unknown-key",
                "readings.post has a key \"\" that is not known. Known are: left, right.",
            ),
            (
                r#"{"format":"hangtrue-survey/1","unit":"in","readings":{"width":{"low":92.25}}}"#,
                "number-for-text",
                "readings.width.low is the number 92.25. Write a reading in quotation marks, as \
                 it was typed: \"92.25\".",
            ),
            (
                r#"{"format":"hangtrue-survey/1","unit":"in","readings":{"bow":{"first":null}}}"#,
                "wrong-type",
                "readings.bow.first is null. A place holds one reading in quotation marks or a \
                 list of them; leave it out where nothing was read.",
            ),
            (
                r#"{"format":"hangtrue-survey/1","unit":"in","readings":{"bow":{"first":["1",2]}}}"#,
                "number-for-text",
                "readings.bow.first.1 is the number 2. Write a reading in quotation marks, as it \
                 was typed: \"2\".",
            ),
            (
                r#"{"format":"hangtrue-survey/1","id":true,"unit":"in","readings":{}}"#,
                "wrong-type",
                "id is true or false; a text is expected.",
            ),
        ];
        for (json, code, message) in cases {
            let (_, error) = parse(json).unwrap_err();
            assert_eq!(error.fault.code(), code, "{json}");
            assert_eq!(crate::say::file(Language::English, &error), message, "{json}");
        }
    }

    #[test]
    fn the_id_is_handed_back_also_with_a_refusal() {
        for (json, expected) in [
            (r#"{"unit":1,"id":"last"}"#, Id::Text("last".to_owned())),
            (r#"{"id":7}"#, Id::Number("7".to_owned())),
            (r#"{"id":null}"#, Id::None),
            (r#"{"id":["x"]}"#, Id::None),
            ("{", Id::None),
        ] {
            assert_eq!(parse(json).unwrap_err().0, expected, "{json}");
        }
    }

    #[test]
    fn a_strangers_long_key_is_cut_in_the_error() {
        let json = format!(r#"{{"{}":1}}"#, "k".repeat(10_000));
        assert!(crate::say::file(Language::English, &parse(&json).unwrap_err().1).len() < 200);
        let deep = "[".repeat(100_000);
        assert_eq!(parse(&deep).unwrap_err().1.fault.code(), "not-json");
    }

    proptest! {
        #[test]
        fn no_text_makes_it_panic(text in ".*") {
            let _ = parse(&text);
        }

        /// A document of the right shape, with one piece replaced by anything.
        #[test]
        fn no_change_to_a_survey_makes_it_panic(at in 0..DEMO.len(), len in 0..20_usize, put in ".{0,5}") {
            let end = (at + len).min(DEMO.len());
            let _ = parse(&[&DEMO[..at], &put, &DEMO[end..]].concat());
        }
    }
}
