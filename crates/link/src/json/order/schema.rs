//! The published JSON Schema of the format, for tooling.

use schemars::generate::SchemaSettings;
use schemars::transform::{RecursiveTransform, Transform as _};
use schemars::{Schema, SchemaGenerator, json_schema};

use super::{FORMAT, OrderFile};
use crate::json::schema::never_null;

/// The schema, draft 2020-12.
#[must_use]
pub fn schema() -> Schema {
    let settings = SchemaSettings::draft2020_12();
    let mut schema = settings.into_generator().into_root_schema_for::<OrderFile>();
    RecursiveTransform(never_null).transform(&mut schema);
    schema.insert("title".into(), FORMAT.into());
    schema.insert("required".into(), ["format", "unit", "readings"].to_vec().into());
    schema
}

pub(super) fn format(_: &mut SchemaGenerator) -> Schema {
    json_schema!({ "const": FORMAT })
}

pub(super) fn id(_: &mut SchemaGenerator) -> Schema {
    json_schema!({ "type": ["string", "number"] })
}

pub(super) fn unit(_: &mut SchemaGenerator) -> Schema {
    json_schema!({ "enum": ["in", "mm"] })
}

pub(super) fn verdict(_: &mut SchemaGenerator) -> Schema {
    json_schema!({ "enum": ["clear", "recheck", "stop"] })
}

pub(super) fn date(_: &mut SchemaGenerator) -> Schema {
    json_schema!({ "type": "string", "format": "date" })
}
