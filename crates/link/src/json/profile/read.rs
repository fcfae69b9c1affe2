//! How a record of a file is read: one declaration makes the type, its reader and, for
//! tooling, its schema.

use super::fault::ProfileFault;
use crate::json::error::{Fault, FileError, NodeKind};
use crate::json::text::{Node, Value};
use crate::json::walk::At;

/// Something that can stand in a file.
pub(super) trait Read: Sized {
    /// Reads the value at `at`.
    fn read(at: &At<'_, '_>) -> Result<Self, FileError>;

    /// Reads the value under `key`, which is an error where there is none.
    fn slot(
        at: &At<'_, '_>,
        key: &'static str,
        node: Option<&Node<'_>>,
    ) -> Result<Self, FileError> {
        Self::read(&at.required(key, node)?)
    }
}

/// What may be left out.
impl<T: Read> Read for Option<T> {
    fn read(at: &At<'_, '_>) -> Result<Self, FileError> {
        T::read(at).map(Some)
    }
    fn slot(
        at: &At<'_, '_>,
        key: &'static str,
        node: Option<&Node<'_>>,
    ) -> Result<Self, FileError> {
        node.map_or(Ok(None), |node| Self::read(&at.child(key, node)))
    }
}

/// The most items of any list.
pub(super) const ITEMS_MOST: usize = 50;

impl<T: Read> Read for Vec<T> {
    fn read(at: &At<'_, '_>) -> Result<Self, FileError> {
        let Value::List(items) = &at.node.value else {
            return Err(at.error(Fault::Kind { expected: NodeKind::List, found: at.node.into() }));
        };
        if items.len() > ITEMS_MOST {
            return Err(at.error(ProfileFault::TooMany { most: ITEMS_MOST }));
        }
        let mut list = Vec::with_capacity(items.len());
        for (index, item) in items.iter().enumerate() {
            list.push(T::read(&at.child(&index.to_string(), item))?);
        }
        Ok(list)
    }
}

impl Read for bool {
    fn read(at: &At<'_, '_>) -> Result<Self, FileError> {
        at.bool()
    }
}

/// What must hold between the values of a record.
pub(super) trait Hold {
    /// The first thing that does not hold.
    fn hold(&self, _at: &At<'_, '_>) -> Result<(), FileError> {
        Ok(())
    }
}

/// Declares a record: a key of the file for each field. A field whose type is an
/// `Option` may be left out; any other key is an error.
macro_rules! record {
    ($($(#[$doc:meta])* $name:ident { $($(#[$about:meta])* $field:ident: $kind:ty,)* })*) => {$(
        $(#[$doc])*
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        #[cfg_attr(feature = "schema", schemars(deny_unknown_fields))]
        pub(super) struct $name { $($(#[$about])* pub(super) $field: $kind,)* }

        impl Read for $name {
            fn read(at: &At<'_, '_>) -> Result<Self, FileError> {
                let [$($field),*] = at.object([$(stringify!($field)),*])?;
                let record = Self {
                    $($field: <$kind as Read>::slot(at, stringify!($field), $field)?,)*
                };
                record.hold(at)?;
                Ok(record)
            }
        }
    )*};
}
pub(super) use record;

/// Declares a choice of a few texts, each standing for a value.
macro_rules! choice {
    ($($(#[$doc:meta])* $name:ident: $kind:ty { $($text:literal = $value:expr,)* })*) => {$(
        $(#[$doc])*
        pub(super) struct $name(pub(super) $kind);

        impl $name {
            const TEXTS: &'static [&'static str] = &[$($text),*];
        }

        impl Read for $name {
            fn read(at: &At<'_, '_>) -> Result<Self, FileError> {
                at.choice(Self::TEXTS, |text| match text {
                    $($text => Some(Self($value)),)*
                    _ => None,
                })
            }
        }

        #[cfg(feature = "schema")]
        impl schemars::JsonSchema for $name {
            fn inline_schema() -> bool {
                true
            }
            fn schema_name() -> std::borrow::Cow<'static, str> {
                stringify!($name).into()
            }
            fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
                schemars::json_schema!({ "enum": Self::TEXTS })
            }
        }
    )*};
}
pub(super) use choice;
