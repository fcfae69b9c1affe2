//! What a profile's file holds: the one declaration of the format.
//!
//! A comment here is what a dealer reads beside the field in the builder, and what
//! the schema says of the key.

use hangtrue_core::profile::{Take, is_key_taken};
use hangtrue_core::{Length, Spot, Unit};

use super::FORMAT;
use super::fault::ProfileFault;
use super::read::{Hold, Read, choice, record};
use super::value::{
    Drum, Email, Hex, Key, Measure, Number, NumberFormat, Page, Phone, Spoken, Text, Weight, Whole,
};
use crate::json::error::FileError;
use crate::json::walk::At;

record! {
    /// A dealer's own rules for orders of roll-up doors.
    ProfileFile {
        /// The format's name and version.
        format: Format,
        /// Your business's name, as customers know it.
        name: Text<80>,
        /// Counts up with every change. It travels with each order, so that you see which rules were used.
        revision: Whole<1, 1_000_000>,
        /// The unit that fields begin with. The customer can change it.
        unit: Option<UnitName>,
        /// The languages you offer; all of them if left out.
        languages: Option<Vec<LanguageName>>,
        /// Who gets the order.
        contact: Option<ContactFile>,
        /// How an order's number is made. {check} is needed: no server counts the orders. {date} and {vehicle} can be used.
        number: Option<NumberFormat>,
        /// How the ordered number is taken from several readings. The tightest always fits; the mean may not, where the frame is out of square.
        take: Option<TakeName>,
        /// The step to which ordered numbers are rounded, always to the side on which the door fits.
        step: Option<StepName>,
        /// Closing readings without which no order is made.
        closing: Option<Vec<ClosingName>>,
        /// What decides which reading is asked for next.
        costs: Option<CostsFile>,
        /// Limits in the place of ours. What is physically or legally impossible stays impossible.
        limits: Option<LimitsFile>,
        /// The door lines you offer.
        doors: Option<Vec<DoorFile>>,
        /// Questions of your own.
        questions: Option<Vec<QuestionFile>>,
        /// How often a door that hangs is looked after; as ours where it is left out.
        care: Option<CareFile>,
        /// Texts of your own.
        texts: Option<TextsFile>,
        /// Your colors.
        colors: Option<ColorsFile>,
    }

    /// Who gets the order. Each way that is given is offered to the customer.
    ContactFile {
        /// An e-mail address.
        email: Option<Email>,
        /// A number that takes text messages.
        sms: Option<Phone>,
        /// A number that somebody answers.
        phone: Option<Phone>,
        /// A page of yours that is opened with the order behind its #.
        page: Option<Page>,
    }

    /// What a wrong order costs against one more reading; only their ratio matters.
    CostsFile {
        /// A door cut to a wrong number, and the truck that waits for the next.
        miss: Number<1, 1_000_000>,
        /// One more reading.
        minute: Number<0, 10_000>,
    }

    /// The limits that can be moved.
    LimitsFile {
        /// Post-to-post width.
        width: Option<LimitFile>,
        /// Sill-to-header height.
        height: Option<LimitFile>,
        /// Header depth. A header under the least is built down to it.
        header: Option<LimitFile>,
        /// Roof-bow depth.
        bow: Option<LimitFile>,
        /// Post width. A post under the least is built out to it.
        post: Option<LimitFile>,
        /// What is left between the header's underside and the bow's.
        under_bow: Option<LimitFile>,
        /// How far readings of the width, the height or the header may lie apart.
        spread: Option<LimitFile>,
        /// How far readings of the bows may lie apart.
        bow_spread: Option<LimitFile>,
        /// How far repeats at one marked spot may lie apart.
        repeat: Option<LimitFile>,
    }

    /// A limit. An end that is left out stays ours.
    LimitFile {
        /// The least that passes.
        least: Option<Measure>,
        /// The most that passes.
        most: Option<Measure>,
        /// Your reason, shown to the customer.
        reason: Spoken,
        /// Refuse what is beyond; otherwise the customer is asked and can confirm.
        stop: Option<bool>,
    }

    /// A line of doors.
    DoorFile {
        /// Its key, kept in the order.
        key: Key,
        /// Its name.
        name: Spoken,
        /// What to say of it.
        note: Option<Spoken>,
        /// The header depth it needs.
        header: Option<Measure>,
        /// The post width its track needs.
        post: Option<Measure>,
        /// Its track.
        track: Option<TrackFile>,
        /// Its panels.
        panel: Option<PanelFile>,
        /// How far one turn of the drum lifts the door, 3 to 60 in.
        drum_circumference: Option<Drum>,
        /// Turns left on the spring when the door is open.
        preload_turns: Option<Number<0, 20>>,
    }

    /// The path of the rollers: straight up, an arc, straight on under the roof.
    TrackFile {
        /// Radius of the arc, to the axes of the rollers.
        radius: Option<Measure>,
        /// From the header's underside up to where the arc begins.
        rise: Option<Measure>,
        /// Fall of the upper track towards the rear, in degrees.
        slope: Option<Number<0, 30>>,
        /// From the axes of the rollers out to the panels' inner faces.
        offset: Option<Measure>,
    }

    /// A door's panels.
    PanelFile {
        /// Inner to outer face.
        thickness: Option<Measure>,
        /// Hinge to hinge.
        height: Option<Measure>,
        /// Mass per area.
        weight: Option<Weight>,
    }

    /// A question of your own.
    QuestionFile {
        /// Its key, kept in the order.
        key: Key,
        /// The question.
        ask: Spoken,
        /// How to answer it.
        hint: Option<Spoken>,
        /// Whether an order needs the answer.
        required: Option<bool>,
        /// What an answer is.
        kind: KindName,
        /// For a choice: the answers offered.
        choices: Option<Vec<ChoiceFile>>,
        /// For a length: the least.
        least: Option<Measure>,
        /// For a length: the most.
        most: Option<Measure>,
        /// For a text: the most characters.
        characters: Option<Whole<1, 120>>,
    }

    /// An answer that can be chosen.
    ChoiceFile {
        /// Its key, kept in the order.
        key: Key,
        /// What the customer reads.
        label: Spoken,
    }

    /// How often each work is done.
    CareFile {
        /// A few drops of oil: rollers, hinges, bearings, spring.
        lubrication: Option<IntervalFile>,
        /// The cables looked at along their whole length.
        cables: Option<IntervalFile>,
        /// The whole door inspected.
        inspection: Option<IntervalFile>,
        /// The spring replaced.
        spring: Option<IntervalFile>,
    }

    /// By the calendar or by use, whichever comes first. What is left out stays ours.
    IntervalFile {
        /// In months.
        months: Option<Whole<1, 120>>,
        /// In openings of the door.
        cycles: Option<Whole<1, 1_000_000>>,
    }

    /// Texts of your own.
    TextsFile {
        /// On the first screen.
        start: Option<Spoken>,
        /// Beside the finished order.
        send: Option<Spoken>,
    }

    /// Your colors, by day and by night. A scheme that is left out stays ours.
    ColorsFile {
        /// By day.
        light: Option<PaletteFile>,
        /// By night.
        dark: Option<PaletteFile>,
    }

    /// The colors of one scheme. Text must stand out from its ground by 4.5 to 1 (WCAG 2.2).
    PaletteFile {
        /// Text and lines.
        ink: Hex,
        /// What they stand on.
        paper: Hex,
        /// Buttons that go on, and marks.
        accent: Hex,
        /// Text on the accent.
        on_accent: Hex,
        /// What stops an order; the ink if left out.
        stop: Option<Hex>,
    }
}

choice! {
    /// The format's name.
    Format: () { "hangtrue-profile/1" = (), }
    /// A unit of the fields.
    UnitName: Unit { "in" = Unit::Inch, "mm" = Unit::Millimetre, }
    /// A language.
    LanguageName: &'static str { "en" = "en", "es" = "es", "fr" = "fr", }
    /// How a number is taken.
    TakeName: Take { "tightest" = Take::Tightest, "mean" = Take::Mean, }
    /// A step of rounding.
    StepName: Length {
        "1/16 in" = Length::SIXTEENTH,
        "1/8 in" = Length::from_sixteenths(2),
        "1 mm" = Length::MILLIMETRE,
    }
    /// A closing reading.
    ClosingName: Spot {
        "diagonal.rising" = Spot::DiagonalRising,
        "diagonal.falling" = Spot::DiagonalFalling,
        "loop.sill_to_roof" = Spot::LoopSillToRoof,
        "loop.sill_to_bow" = Spot::LoopSillToBow,
    }
    /// What an answer is.
    KindName: Answers {
        "choice" = Answers::Choice,
        "yes-no" = Answers::YesNo,
        "length" = Answers::Length,
        "text" = Answers::Text,
    }
}

/// What an answer is, without its particulars.
#[derive(Clone, Copy, PartialEq)]
pub(super) enum Answers {
    Choice,
    YesNo,
    Length,
    Text,
}

impl Hold for ContactFile {}
impl Hold for CostsFile {}
impl Hold for LimitsFile {}
impl Hold for TrackFile {}
impl Hold for PanelFile {}
impl Hold for DoorFile {}
impl Hold for ChoiceFile {}
impl Hold for CareFile {}
impl Hold for TextsFile {}
impl Hold for ColorsFile {}

impl Hold for ProfileFile {
    fn hold(&self, at: &At<'_, '_>) -> Result<(), FileError> {
        let doors = self.doors.iter().flatten().map(|door| door.key.0.as_str());
        once(at, "doors", doors)?;
        let questions = self.questions.iter().flatten().map(|question| question.key.0.as_str());
        once(at, "questions", questions)
    }
}

impl Hold for LimitFile {
    fn hold(&self, at: &At<'_, '_>) -> Result<(), FileError> {
        if self.least.is_none() && self.most.is_none() {
            return Err(at.error(ProfileFault::NoEnd));
        }
        in_order(at, self.least, self.most)
    }
}

impl Hold for IntervalFile {
    fn hold(&self, at: &At<'_, '_>) -> Result<(), FileError> {
        if self.months.is_none() && self.cycles.is_none() {
            return Err(at.error(ProfileFault::NoInterval));
        }
        Ok(())
    }
}

impl Hold for QuestionFile {
    fn hold(&self, at: &At<'_, '_>) -> Result<(), FileError> {
        let kind = self.kind.0;
        let ends = self.least.is_some() || self.most.is_some();
        for (key, given, belongs) in [
            ("choices", self.choices.is_some(), kind == Answers::Choice),
            ("least or most", ends, kind == Answers::Length),
            ("characters", self.characters.is_some(), kind == Answers::Text),
        ] {
            if given && !belongs {
                return Err(at.error(ProfileFault::OtherKind { key }));
            }
        }
        let choices = self.choices.iter().flatten().map(|choice| choice.key.0.as_str());
        if kind == Answers::Choice && choices.clone().count() < 2 {
            return Err(at.error(ProfileFault::FewChoices));
        }
        if is_key_taken(&self.key.0) {
            return Err(at.error(ProfileFault::Taken { key: self.key.0.clone() }));
        }
        once(at, "choices", choices)?;
        in_order(at, self.least, self.most)
    }
}

impl Hold for PaletteFile {
    fn hold(&self, at: &At<'_, '_>) -> Result<(), FileError> {
        self.palette().poor().map_or(Ok(()), |poor| Err(at.error(ProfileFault::Contrast(poor))))
    }
}

fn in_order(
    at: &At<'_, '_>,
    least: Option<Measure>,
    most: Option<Measure>,
) -> Result<(), FileError> {
    match (least, most) {
        (Some(Measure(least)), Some(Measure(most))) if least > most => {
            Err(at.error(ProfileFault::UpsideDown { least, most }))
        }
        _ => Ok(()),
    }
}

/// Every key stands once.
fn once<'a>(
    at: &At<'_, '_>,
    list: &'static str,
    keys: impl Iterator<Item = &'a str>,
) -> Result<(), FileError> {
    let mut seen = Vec::new();
    for key in keys {
        if seen.contains(&key) {
            return Err(at.error(ProfileFault::SameKey { list, key: key.to_owned() }));
        }
        seen.push(key);
    }
    Ok(())
}

// `FORMAT` and the choice above are the same name.
const _: () = assert!(matches!(FORMAT.as_bytes(), b"hangtrue-profile/1"));
