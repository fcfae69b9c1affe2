//! The published JSON Schema of the format, for tooling.

use schemars::Schema;
use schemars::generate::SchemaSettings;
use schemars::transform::{RecursiveTransform, Transform as _};

use super::file::ProfileFile;
use crate::json::schema::never_null;

/// The schema, draft 2020-12.
#[must_use]
pub fn schema() -> Schema {
    let settings = SchemaSettings::draft2020_12();
    let mut schema = settings.into_generator().into_root_schema_for::<ProfileFile>();
    RecursiveTransform(never_null).transform(&mut schema);
    schema.insert("title".into(), super::FORMAT.into());
    schema
}
