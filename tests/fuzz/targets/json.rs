#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| hangtrue_hostile::target("json")(bytes));
