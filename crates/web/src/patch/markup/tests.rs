use std::fmt::Write as _;

use proptest::prelude::*;

use super::*;

/// A tree as a view would build it; names as in the markup.
#[derive(Clone, Debug, PartialEq)]
enum Tree {
    Text(String),
    Element(String, Vec<(String, String)>, Vec<Tree>),
}

fn text() -> impl Strategy<Value = String> {
    prop_oneof![
        any::<String>(),
        // What breaks readers of markup: quotes, brackets, references, ends of things.
        proptest::collection::vec(
            prop::sample::select(vec![
                "<", ">", "\"", "'", "&", ";", "&amp;", "&lt", "</", "/>", "<!--", "-->", "]]>",
                "<script>", "\0", "\r\n", " ", "=", "\u{2028}", "¾", "&#x3c;", "on",
            ]),
            0..8
        )
        .prop_map(|parts| parts.concat()),
    ]
}

fn tree() -> impl Strategy<Value = Tree> {
    let attributes = prop::sample::subsequence(
        vec!["id", "class", "viewBox", "data-key", "aria-label", "hidden", "xlink:href"],
        0..4,
    )
    .prop_flat_map(|names| {
        let count = names.len();
        (Just(names), proptest::collection::vec(text(), count))
    })
    .prop_map(|(names, values)| {
        names.into_iter().map(str::to_owned).zip(values).collect::<Vec<_>>()
    })
    .boxed();
    let leaf = prop_oneof![
        text().prop_map(Tree::Text),
        (prop::sample::select(VOID.to_vec()), attributes.clone())
            .prop_map(|(name, attributes)| Tree::Element(name.to_owned(), attributes, Vec::new())),
    ];
    leaf.prop_recursive(5, 60, 6, move |inner| {
        let names = vec!["div", "p", "svg", "linearGradient", "my-element", "textarea"];
        (prop::sample::select(names), attributes.clone(), proptest::collection::vec(inner, 0..6))
            .prop_map(|(name, attributes, children)| {
                Tree::Element(name.to_owned(), attributes, children)
            })
    })
}

fn element(name: &str, attributes: &[(&str, &str)], children: Vec<Tree>) -> Tree {
    let owned = |(name, value): &(&str, &str)| ((*name).to_owned(), (*value).to_owned());
    Tree::Element(name.to_owned(), attributes.iter().map(owned).collect(), children)
}

/// Writes a tree as `maud` would, with `maud`'s own escaping.
fn write(tree: &Tree, out: &mut String) {
    match tree {
        Tree::Text(text) => escape(text, out),
        Tree::Element(name, attributes, children) => {
            let _ = write!(out, "<{name}");
            for (name, value) in attributes {
                let _ = write!(out, " {name}");
                if !value.is_empty() {
                    out.push_str("=\"");
                    escape(value, out);
                    out.push('"');
                }
            }
            out.push('>');
            if !VOID.contains(&name.as_str()) {
                children.iter().for_each(|child| write(child, out));
                let _ = write!(out, "</{name}>");
            }
        }
    }
}

fn escape(text: &str, out: &mut String) {
    maud::Escaper::new(out).write_str(text).unwrap();
}

/// What [`parse`] must make of trees: adjacent texts are one, and an empty one is none.
fn expected(trees: &[Tree]) -> Vec<Tree> {
    let mut nodes: Vec<Tree> = Vec::new();
    for tree in trees {
        match tree {
            Tree::Text(text) if text.is_empty() => {}
            Tree::Text(text) => match nodes.last_mut() {
                Some(Tree::Text(before)) => before.push_str(text),
                _ => nodes.push(tree.clone()),
            },
            Tree::Element(name, attributes, children) => {
                nodes.push(Tree::Element(name.clone(), attributes.clone(), expected(children)));
            }
        }
    }
    nodes
}

/// What was made.
fn read(markup: &str) -> Result<Vec<Tree>, Fault> {
    parse(markup.to_owned()).map(|tree| tree.nodes().map(owned).collect())
}

fn owned(node: Node<'_>) -> Tree {
    let decoded = |written: &str| decode(written).unwrap().into_owned();
    match (node.name(), node.text()) {
        (Some(name), None) => Tree::Element(
            name.to_owned(),
            node.attributes().map(|(name, value)| (name.to_owned(), decoded(value))).collect(),
            node.children().map(owned).collect(),
        ),
        (None, Some(text)) => Tree::Text(decoded(text)),
        both => panic!("{both:?}"),
    }
}

proptest! {
    #[test]
    fn what_maud_writes_is_read_back(trees in proptest::collection::vec(tree(), 0..4)) {
        let mut markup = String::new();
        trees.iter().for_each(|tree| write(tree, &mut markup));
        prop_assert_eq!(read(&markup), Ok(expected(&trees)), "{}", markup);
    }

    #[test]
    fn only_equal_markup_has_an_equal_hash(one in tree(), other in tree()) {
        let mut markups = [String::from("<p>"), String::from("<p>")];
        for (markup, tree) in markups.iter_mut().zip([one, other]) {
            write(&tree, markup);
            markup.push_str("</p>");
        }
        let [one, other] = markups.clone().map(|markup| parse(markup).unwrap());
        let [one, other] = [&one, &other].map(|tree| tree.nodes().next().unwrap());
        prop_assert_eq!(one.is_like(other), markups[0] == markups[1]);
    }

    #[test]
    fn text_from_a_stranger_stays_text(hostile in text()) {
        let mut markup = String::from("<p title=\"");
        escape(&hostile, &mut markup);
        markup.push_str("\">");
        escape(&hostile, &mut markup);
        markup.push_str("</p>");
        let trees = [element("p", &[("title", &hostile)], vec![Tree::Text(hostile.clone())])];
        prop_assert_eq!(read(&markup), Ok(expected(&trees)));
    }

    #[test]
    fn anything_else_is_a_fault_and_never_a_panic(markup in text()) {
        let _ = parse(format!("<p a=\"{markup}"));
        let _ = parse(format!("<{markup}>"));
        let _ = parse(markup);
    }
}

#[test]
fn forms_that_inline_svg_uses() {
    let markup = "<svg viewBox='0 0 1 1'><path d=\"M0 0\"/><br></svg>&#39;&#x27;&apos;&nbsp;";
    let expected = vec![
        element(
            "svg",
            &[("viewBox", "0 0 1 1")],
            vec![element("path", &[("d", "M0 0")], Vec::new()), element("br", &[], Vec::new())],
        ),
        Tree::Text("'''\u{a0}".into()),
    ];
    assert_eq!(read(markup), Ok(expected));
}

#[test]
fn faults_say_where_and_what() {
    for (markup, at, what) in [
        ("<p>", 3, "an element that is never closed"),
        ("</p>", 2, "an end tag without its start"),
        ("<p></div>", 8, "an end tag that does not match its start"),
        ("<p a=\"b", 7, "an open quote"),
        ("<p a=b></p>", 5, "a value without quotes"),
        ("a & b", 5, "a bare ampersand"),
        ("&copy;", 6, "a character reference that is not known"),
        ("&#xD800;", 8, "a character reference that is not known"),
        ("<!-- a -->", 1, "a name that is none"),
        ("<p><script>", 10, "a script"),
        ("<SCRIPT>", 7, "a script"),
        ("<a onclick=\"b\">", 10, "an attribute that runs"),
        ("<a ONload>", 9, "an attribute that runs"),
        ("<iframe srcdoc=\"b\">", 14, "an attribute that runs"),
    ] {
        assert_eq!(read(markup), Err(Fault { at, what }), "{markup}");
    }
}

#[test]
fn an_element_with_a_field_has_state() {
    for (markup, expected) in [
        ("<p>a<b></b></p>", false),
        ("<p><b><input></b><i></i></p>", true),
        ("<select><option>1</option></select>", true),
        ("<textarea></textarea>", true),
    ] {
        let tree = parse(markup.to_owned()).unwrap();
        assert_eq!(tree.nodes().next().unwrap().has_state(), expected, "{markup}");
    }
}
