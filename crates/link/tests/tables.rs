//! Tables and other lists as they are read: whole, damaged, in other units; as whole files in
//! `tests/goldens/link`. With `HANGTRUE_BLESS=1` they are written anew.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, reason = "a test may fail")]

mod orders;

use hangtrue_core::profile::Profile;
use hangtrue_core::say::Language;
use hangtrue_core::{Spot, check_order};
use hangtrue_golden::golden;
use hangtrue_link::csv::{Sheet, line};
use hangtrue_link::json::Id;
use hangtrue_link::json::order::OrderFile;
use hangtrue_link::list::{Answer, Item};
use hangtrue_link::url;

/// Name and text of each table.
fn tables() -> Vec<(&'static str, String)> {
    let order = orders::demo();
    let link = url("https://dealer.example/doors/", &order).unwrap();
    let damaged = link.replace("#1", "#1A");
    let long = "x".repeat(60);
    [
        (
            "a spreadsheet's",
            "\u{feff}Order #,Truck,Width (in),Sill to header,Header depth,Bow,Frame prepared,Notes,\
             Remarks,Phone,Customer,Color\r\n\r\n\
             A-1,Demo 1,92 3/16,\"8' 5 1/2\"\"\",9 1/2,1 1/4,Yes,first,,+1 555 010 0199,,red\r\n\
             A-2,,92.5,101.5,9.5,1.25,,\"two\r\nlines\",more,,Demo,\r\n,,,,,,,,,,,\r\n\
             A-3,'=1+1,92,101,9,1,BUILT,\"'=2\",\"it's\",'tis,,\r\n\
             \u{a0}A-4 ,,92,101,9,1,as found, x ,,,,"
                .to_owned(),
        ),
        (
            "one that is damaged",
            format!(
                "id,width,height,header,bow,unit,prepared\n\
                 a,92,101,9,1,in\nb,92,101,9,1,ells,yes\nc,92,101,9,1,IN.,perhaps\nd,,,,,,\n\
                 e,92 3/16\",101,9,1,in,no\nf,so wide,101,9,1,in,no\ng\n\
                 h,92,101,9,1,{long},no\ni,92,101,9,1,in,no,\n\n  \n\
                 j,92,\"101\",9,1,in,y\nk,\"92\"x,101,9,1,in,no\nl,92,101,9,1,in,no\n"
            ),
        ),
        ("a quotation mark that stays open", "id,width\na,92\n\"b,93\nc,94\n".to_owned()),
        (
            "units of rows and columns",
            "id;width;height (cm);header mm;bow;unit;left post\n\
             a;2345;256,6;242;32;mm;60\nb;92,5;256.6;242;1,25;inches;2 1/2\n\
             c;8;;;;feet;\nd;2,345;;;;Metre;\ne;92 in;8 ft 5 in;9 1/2 in;1 1/4 in;mm;64 mm\n\
             f;92.5;;;;\"\"\"\"; 3\n"
                .to_owned(),
        ),
        (
            "millimetres without a unit",
            "width,height,header,bow\n2345,2566,242,32\n92,2566,242,32\n".to_owned(),
        ),
        ("inches, most of them", "width,height\n2345,101\n92,101\n".to_owned()),
        ("as many of both", "width,height\n2345,101\n300,2566\n301,92\n".to_owned()),
        ("a unit in a name and no rows", "width mm,height,header\n".to_owned()),
        ("names and a unit of their own", "width,height\n92 in,2566 mm\n2345,2566\n".to_owned()),
        ("bare numbers", "92 3/16\t101 1/2\t9 1/2\t1 1/4\nA\tb\tc\td\n93\"\t101\t9\t1\n".to_owned()),
        ("bare numbers behind a name", "T-4,92,101,9,1\nT-5,93,101,9,1\n".to_owned()),
        ("bare numbers among words", "T-4,red,92,101,9,1,x\nT-5,blue,93,101,9,1,y\n".to_owned()),
        ("more words than numbers", "red,blue,green,gray,92,101,9,1\n1,2,3,4,5,6,7,8\n".to_owned()),
        ("three numbers", "92,101,9\n93,102,10\n".to_owned()),
        ("more than four numbers", "7,92,101,9,1\n8,93,101,9,1\n".to_owned()),
        (
            "places named twice",
            "Width,Width,Width,Width,Bow,Bow,Diagonal,Diagonal,ID,Order,Unit,Units\n\
             92,93,94,95,1,2,137,138,a,b,in,mm\n"
                .to_owned(),
        ),
        (
            "links",
            format!(
                "order,width,link,url\nA,93,{link},\nB,93,{damaged},\nC,93,,\nD,93, ,{link}\n\
                 E,93,no link,\nF,93\nG,92 3/16,{link},\nH,,{link},\n"
            ),
        ),
        ("blank lines", "\n\r\n \n".to_owned()),
        ("nothing", String::new()),
        ("a mark and nothing", "\u{feff}".to_owned()),
        ("a header that is damaged", "id,wi\"dth\na,92\n".to_owned()),
    ]
    .into()
}

/// The table as it is understood, and the answer to each row.
fn told(text: &str) -> String {
    let sheet = match Sheet::open(text) {
        Ok(sheet) => sheet,
        Err(fault) => return format!("  {}\n", fault.code()),
    };
    let columns: Vec<String> = sheet
        .columns
        .iter()
        .zip(&sheet.names)
        .map(|(column, name)| {
            let measure = column.measure.map(|measure| format!(" in {}", measure.symbol()));
            format!("{name}: {}{}", column.what.key(), measure.unwrap_or_default())
        })
        .collect();
    let mut lines = vec![
        format!("  {:?}, {}, from line {}", sheet.delimiter, sheet.unit.key(), sheet.start.line),
        format!("  {}", columns.join(" | ")),
    ];
    let mut mark = sheet.start;
    while let Some(row) = sheet.next(text, &mut mark) {
        let came = format!("{:?}", row.source);
        let item = Item::from(row);
        if let Ok(order) = &item.order {
            let readings = Spot::ALL.into_iter().flat_map(|spot| {
                let entries = order.survey.entries(spot).iter();
                entries.map(move |entry| format!("{} {:?}", spot.key(), entry.text))
            });
            let readings = readings.collect::<Vec<_>>().join(", ");
            let (unit, prepared) = (order.survey.unit.key(), order.survey.prepared);
            let texts = [&order.vehicle, &order.note, &order.contact];
            lines.push(format!("  {came}, {unit}, {prepared}, {texts:?}: {readings}"));
            assert_eq!(item.judged, came == "Link");
        }
        let report = item.check(&Profile::default());
        let cells = Answer::new(&item, report.as_ref()).cells(Language::English);
        lines.push(format!("    {}", line(&cells).trim_end()));
    }
    lines.join("\n") + "\n"
}

#[test]
fn tables_are_read_as_they_were() {
    let each = tables().into_iter().map(|(name, text)| format!("{name}\n{}", told(&text)));
    golden("link/tables.txt", &each.collect::<String>());
}

/// Lines of JSON and lines with a link each: what they are called, and the answer.
#[test]
fn lines_are_read_as_they_were() {
    let order = orders::demo();
    let report = check_order(&order, &Profile::default());
    let file = OrderFile::new(Id::Number("12".to_owned()), &order, &report).text();
    let link = url("https://dealer.example/doors/", &order).unwrap();
    let survey = r#"{"id":"A","format":"hangtrue-survey/1","unit":"in","readings":
        {"width":{"low":"92"},"height":{"left":"101"},"header":{"left":"9"},"bow":{"first":"10"}}}"#;
    let items = [
        Item::of_json(1, survey),
        Item::of_json(2, &["\u{feff}", &file].concat()),
        Item::of_json(3, r#"{"id":"B","format":"hangtrue-survey/1"}"#),
        Item::of_json(4, "[1"),
        Item::of_link(5, &["Here: ", &link, "."].concat()),
        Item::of_link(6, &link.replace("#1", "#1A")),
        Item::of_link(7, "https://dealer.example/doors/"),
    ];
    let mut lines = Vec::new();
    for item in items {
        let report = item.check(&Profile::default());
        let of = if item.judged { "an order" } else { "a survey, or none" };
        lines.push(format!("{:?}, {of}", item.id));
        // A check of another is none of it.
        assert_eq!(report.is_some(), item.order.is_ok());
        for language in Language::ALL {
            lines.push(
                line(&Answer::new(&item, report.as_ref()).cells(language)).trim_end().to_owned(),
            );
        }
    }
    golden("link/lines.txt", &lines.join("\n"));
}
