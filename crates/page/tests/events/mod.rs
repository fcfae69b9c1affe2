//! What may happen to the walk, for property tests.

use hangtrue_page::Event;
use proptest::prelude::*;

/// What a person, or the browser, may do at any time.
pub(crate) fn event() -> impl Strategy<Value = Event> {
    let code = prop::sample::select(
        "next|back|go:check|go:send|go:width|go:drafts|change:header.left|eighths:3|\
         nudge:1587500|letters|use:width.low:92|confirm:unusual-opening:width.low|reread:width.low|\
         take:loop.sill-to-bow|skip|copy|copy-link|share|print|adopt|replace|keep|save-file|restart|\
         speak:es|speak:en|take-over|noted|take-theirs|open-draft:1|delete:1|delete-indeed|spare"
            .split('|')
            .map(str::to_owned)
            .collect::<Vec<_>>(),
    );
    let name = prop::sample::select(vec![
        "width.low",
        "width.middle",
        "height.left",
        "header.center",
        "bow.first",
        "post.left",
        "loop.sill-to-bow",
        "unit",
        "prepared",
        "old-door",
        "vehicle",
        "answer:door",
    ]);
    let value =
        prop::sample::select(vec!["92 3/16", "9", "1 1/4", "", "mm", "yes", "twelve", "5'"]);
    prop_oneof![
        code.prop_map(Event::Press),
        (name, value)
            .prop_map(|(name, value)| Event::Input { name: name.into(), value: value.into() }),
        prop::sample::select(vec!["/width", "/check", "", "nothing", "desk"])
            .prop_map(|fragment| Event::Navigate(fragment.into())),
        Just(Event::Settled),
        Just(Event::Slide { name: "width.low".into(), marks: 3 }),
        Just(Event::Open("https://dealer.example/#10".into())),
        Just(Event::File { name: "a.txt".into(), text: Some("no order".into()) }),
        Just(Event::Drafts(vec![(1, "broken".into())])),
        Just(Event::Copied(false)),
        Just(Event::Missing),
    ]
}
