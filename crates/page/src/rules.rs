//! A dealer's rules, as every page takes them.

use hangtrue_core::Survey;
use hangtrue_core::profile::Profile;

/// The rules that hold from now on, and what was wrong with the dealer's: then the built-in ones
/// hold, and the page says so. `untouched` is the survey of a page on which nothing has been typed
/// yet: it begins in the dealer's unit.
pub(crate) fn in_force(
    rules: Result<Profile, String>,
    untouched: Option<&mut Survey>,
) -> (Profile, Option<String>) {
    let profile = match rules {
        Ok(profile) => profile,
        Err(fault) => return (Profile::default(), Some(fault)),
    };
    if let (Some(unit), Some(survey)) = (profile.unit, untouched) {
        survey.set_unit(unit);
    }
    (profile, None)
}

#[cfg(test)]
mod tests {
    use super::*;
    use hangtrue_core::Unit;

    #[test]
    fn a_dealers_unit_is_that_of_a_survey_in_which_nothing_was_typed() {
        let metric = || Profile { unit: Some(Unit::Millimetre), ..Profile::default() };
        let mut survey = Survey::new(Unit::Inch);
        assert_eq!(in_force(Ok(metric()), None), (metric(), None));
        assert_eq!(survey.unit, Unit::Inch);
        assert_eq!(in_force(Ok(metric()), Some(&mut survey)), (metric(), None));
        assert_eq!(survey.unit, Unit::Millimetre);
    }

    #[test]
    fn a_fault_leaves_the_built_in_rules_and_the_unit() {
        let mut survey = Survey::new(Unit::Millimetre);
        let faulty = in_force(Err("no file".to_owned()), Some(&mut survey));
        assert_eq!(faulty, (Profile::default(), Some("no file".to_owned())));
        assert_eq!(survey.unit, Unit::Millimetre);
    }
}
