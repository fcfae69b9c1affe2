//! How a record of a file is written: one declaration makes the type, its writer and,
//! for tooling, its schema.

use crate::json::text::{Entry, Node, Number, Value};

/// Something that can stand in a file.
pub(in crate::json) trait Write {
    /// It, as it is written; none where it is left out.
    fn node(&self) -> Option<Node<'_>>;
}

impl Write for &'static str {
    fn node(&self) -> Option<Node<'_>> {
        Some(Node::text(*self))
    }
}

impl Write for String {
    fn node(&self) -> Option<Node<'_>> {
        Some(Node::text(self.as_str()))
    }
}

impl Write for bool {
    fn node(&self) -> Option<Node<'_>> {
        Some(Value::Bool(*self).into())
    }
}

impl Write for u32 {
    fn node(&self) -> Option<Node<'_>> {
        Some(Value::Number(Number::from(u64::from(*self))).into())
    }
}

impl Write for i64 {
    fn node(&self) -> Option<Node<'_>> {
        Some(Value::Number(Number::from(*self)).into())
    }
}

impl<T: Write> Write for Option<T> {
    fn node(&self) -> Option<Node<'_>> {
        self.as_ref().and_then(Write::node)
    }
}

impl<T: Write> Write for Box<T> {
    fn node(&self) -> Option<Node<'_>> {
        self.as_ref().node()
    }
}

impl<T: Write> Write for Vec<T> {
    fn node(&self) -> Option<Node<'_>> {
        Some(Value::List(self.iter().filter_map(Write::node).collect()).into())
    }
}

/// The entry of a field; `r#loop` is written `loop`.
pub(super) fn entry<'a>(field: &'static str, value: &'a impl Write) -> Option<Entry<'a>> {
    let key = field.strip_prefix("r#").unwrap_or(field).into();
    value.node().map(|node| Entry { key, node })
}

/// Declares records. A field whose type is an `Option` is left out where there is none.
macro_rules! written {
    ($($(#[$doc:meta])* $seen:vis struct $name:ident {
        $($(#[$about:meta])* $field:ident: $kind:ty,)*
    })*) => {$(
        $(#[$doc])*
        #[derive(Clone, Debug)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        #[cfg_attr(feature = "schema", schemars(deny_unknown_fields))]
        $seen struct $name { $($(#[$about])* $field: $kind,)* }

        impl $crate::json::order::write::Write for $name {
            fn node(&self) -> Option<$crate::json::text::Node<'_>> {
                use $crate::json::order::write::entry;
                let entries = [$(entry(stringify!($field), &self.$field)),*];
                let entries = entries.into_iter().flatten().collect();
                Some($crate::json::text::Value::Object(entries).into())
            }
        }
    )*};
}
pub(super) use written;
