//! From what the file holds to the rules it means.

use hangtrue_core::Length;
use hangtrue_core::hang::care::{Set, Work};
use hangtrue_core::profile::{
    Choice, Contact, Costs, Door, End, Kind, Limited, Palette, Panel, Profile, Question, Ruling,
    Track, Words,
};
use hangtrue_core::say::Because;

use super::file::{
    Answers, CareFile, ContactFile, DoorFile, Format, IntervalFile, LimitFile, LimitsFile,
    PaletteFile, PanelFile, ProfileFile, QuestionFile, TrackFile,
};
use super::value::{Measure, Spoken};

/// The most characters of a text answer where the file does not say.
const CHARACTERS: u16 = 60;

fn length(measure: Option<Measure>) -> Option<Length> {
    measure.map(|Measure(length)| length)
}

fn words(spoken: Option<Spoken>) -> Words {
    spoken.map(|Spoken(words)| words).unwrap_or_default()
}

fn each<T, U>(list: Option<Vec<T>>, make: impl Fn(T) -> U) -> Vec<U> {
    list.into_iter().flatten().map(make).collect()
}

impl ProfileFile {
    /// The rules.
    pub(super) fn profile(self) -> Profile {
        // Whatever else a file holds, it says that it is one of these.
        let Format(()) = self.format;
        let name = self.name.0;
        let (start, send) = self.texts.map_or((None, None), |texts| (texts.start, texts.send));
        let (light, dark) = self.colors.map_or((None, None), |colors| (colors.light, colors.dark));
        Profile {
            rulings: self.limits.map(|limits| limits.rulings(&name)).unwrap_or_default(),
            name,
            revision: self.revision.0,
            unit: self.unit.map(|unit| unit.0),
            languages: each(self.languages, |language| language.0.to_owned()),
            contact: self.contact.map(ContactFile::contact).unwrap_or_default(),
            numbering: self.number.map(|number| number.0),
            take: self.take.map(|take| take.0).unwrap_or_default(),
            step: self.step.map(|step| step.0),
            closing: each(self.closing, |closing| closing.0),
            costs: self
                .costs
                .map(|costs| Costs { miss: costs.miss.0, minute: costs.minute.0 })
                .unwrap_or_default(),
            doors: each(self.doors, DoorFile::door),
            questions: each(self.questions, QuestionFile::question),
            care: self.care.map(CareFile::sets).unwrap_or_default(),
            start: words(start),
            send: words(send),
            light: light.map(|palette| palette.palette()),
            dark: dark.map(|palette| palette.palette()),
        }
    }
}

impl ContactFile {
    fn contact(self) -> Contact {
        Contact {
            email: self.email.map(|email| email.0).unwrap_or_default(),
            sms: self.sms.map(|sms| sms.0).unwrap_or_default(),
            phone: self.phone.map(|phone| phone.0).unwrap_or_default(),
            page: self.page.map(|page| page.0).unwrap_or_default(),
        }
    }
}

impl LimitsFile {
    fn rulings(self, dealer: &str) -> Vec<Ruling> {
        let mut rulings = Vec::new();
        for (what, limit) in [
            (Limited::Width, self.width),
            (Limited::Height, self.height),
            (Limited::Header, self.header),
            (Limited::Bow, self.bow),
            (Limited::Post, self.post),
            (Limited::UnderBow, self.under_bow),
            (Limited::Spread, self.spread),
            (Limited::BowSpread, self.bow_spread),
            (Limited::Repeat, self.repeat),
        ] {
            let Some(LimitFile { least, most, reason, stop }) = limit else { continue };
            for (end, bound) in [(End::Least, least), (End::Most, most)] {
                let Some(Measure(bound)) = bound else { continue };
                let because = Because::Dealer { name: dealer.to_owned(), reason: reason.0.clone() };
                let stop = stop.unwrap_or(false);
                rulings.push(Ruling { what, end, bound, because, stop });
            }
        }
        rulings
    }
}

impl DoorFile {
    fn door(self) -> Door {
        Door {
            key: self.key.0,
            name: self.name.0,
            note: words(self.note),
            header_least: length(self.header),
            post_least: length(self.post),
            track: self.track.map(TrackFile::track).unwrap_or_default(),
            panel: self.panel.map(PanelFile::panel).unwrap_or_default(),
            drum_circumference: self.drum_circumference.map(|drum| drum.0),
            preload_turns: self.preload_turns.map(|turns| turns.0),
        }
    }
}

impl TrackFile {
    fn track(self) -> Track {
        Track {
            radius: length(self.radius),
            rise: length(self.rise),
            slope: self.slope.map(|slope| slope.0),
            offset: length(self.offset),
        }
    }
}

impl PanelFile {
    fn panel(self) -> Panel {
        Panel {
            thickness: length(self.thickness),
            height: length(self.height),
            weight: self.weight.map(|weight| weight.0),
        }
    }
}

impl CareFile {
    fn sets(self) -> Vec<Set> {
        let all = [
            (Work::Lubrication, self.lubrication),
            (Work::CablesChecked, self.cables),
            (Work::Inspected, self.inspection),
            (Work::Spring, self.spring),
        ];
        let set = |(work, interval): (Work, Option<IntervalFile>)| {
            let IntervalFile { months, cycles } = interval?;
            let months = months.and_then(|months| u16::try_from(months.0).ok());
            Some(Set { work, months, cycles: cycles.map(|cycles| cycles.0) })
        };
        all.into_iter().filter_map(set).collect()
    }
}

impl QuestionFile {
    fn question(self) -> Question {
        let kind = match self.kind.0 {
            Answers::Choice => Kind::Choice(each(self.choices, |choice| Choice {
                key: choice.key.0,
                label: choice.label.0,
            })),
            Answers::YesNo => Kind::YesNo,
            Answers::Length => Kind::Length { least: length(self.least), most: length(self.most) },
            Answers::Text => {
                let most = self.characters.and_then(|most| u16::try_from(most.0).ok());
                Kind::Text { most: most.unwrap_or(CHARACTERS) }
            }
        };
        Question {
            key: self.key.0,
            ask: self.ask.0,
            hint: words(self.hint),
            required: self.required.unwrap_or(false),
            kind,
        }
    }
}

impl PaletteFile {
    /// The colours.
    pub(super) fn palette(&self) -> Palette {
        Palette {
            ink: self.ink.0,
            paper: self.paper.0,
            accent: self.accent.0,
            on_accent: self.on_accent.0,
            stop: self.stop.as_ref().map(|stop| stop.0),
        }
    }
}
