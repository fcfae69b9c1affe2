//! Who gets the order.

/// The ways an order can reach the dealer; each may be empty.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Contact {
    /// An e-mail address.
    pub email: String,
    /// A number that takes text messages.
    pub sms: String,
    /// A number that somebody answers.
    pub phone: String,
    /// A page of the dealer's, opened with the order's payload as its fragment.
    pub page: String,
}

impl Contact {
    /// Whether nobody is named.
    #[must_use]
    pub const fn is_empty(&self) -> bool {
        self.email.is_empty()
            && self.sms.is_empty()
            && self.phone.is_empty()
            && self.page.is_empty()
    }
}

/// The most characters of an address (RFC 5321 §4.5.3.1.3, less the brackets).
const EMAIL_MOST: usize = 254;

/// Whether `text` can stand behind `mailto:` as one address, with nothing that a mail
/// program could take for a second one, a header or a subject.
#[must_use]
pub fn is_email(text: &str) -> bool {
    let plain = |c: char| c.is_ascii_alphanumeric() || "!#$'*+-/=^_`{|}~.".contains(c);
    let name = |c: char| c.is_ascii_alphanumeric() || c == '-' || c == '.';
    let Some((local, domain)) = text.split_once('@') else { return false };
    let dots = |part: &str| part.starts_with('.') || part.ends_with('.') || part.contains("..");
    text.len() <= EMAIL_MOST
        && !local.is_empty()
        && domain.contains('.')
        && local.chars().all(plain)
        && domain.chars().all(name)
        && !dots(local)
        && !dots(domain)
}

/// Whether `text` is a telephone number: digits, spaces and the marks people put between.
#[must_use]
pub fn is_phone(text: &str) -> bool {
    let digits = text.chars().filter(char::is_ascii_digit).count();
    let known =
        |(at, c): (usize, char)| c.is_ascii_digit() || " -.()".contains(c) || (c == '+' && at == 0);
    (3..=15).contains(&digits) && text.len() <= 32 && text.char_indices().all(known)
}

/// A telephone number as `tel:` and `sms:` take it (RFC 3966): digits, and a `+` before them.
#[must_use]
pub fn dialled(number: &str) -> String {
    number.chars().filter(|c| c.is_ascii_digit() || *c == '+').collect()
}

/// Whether `text` is the address of a page on the web: `https` (or `http`), a host, no
/// spaces, no fragment (the order goes there) and no user name (it hides the host).
#[must_use]
pub fn is_page(text: &str) -> bool {
    let rest = text.strip_prefix("https://").or_else(|| text.strip_prefix("http://"));
    let Some(rest) = rest else { return false };
    let host = rest.split(['/', '?']).next().unwrap_or_default();
    let plain = |c: char| c.is_ascii_graphic() && !"\"'<>\\^`{|}#@".contains(c);
    let (name, port) = host.split_once(':').unwrap_or((host, "0"));
    let label = |c: char| c.is_ascii_alphanumeric() || c == '-' || c == '.';
    text.len() <= 2000
        && rest.chars().all(plain)
        && name.starts_with(|c: char| c.is_ascii_alphanumeric())
        && name.chars().all(label)
        && port.parse::<u16>().is_ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_contact_with_any_one_way_is_none_that_is_empty() {
        let of = |at: usize| {
            let [email, sms, phone, page] =
                [0, 1, 2, 3].map(|one| if one == at { "x".to_owned() } else { String::new() });
            Contact { email, sms, phone, page }.is_empty()
        };
        assert_eq!([0, 1, 2, 3, 4].map(of), [false, false, false, false, true]);
    }

    #[test]
    fn a_host_may_hold_a_hyphen_and_no_underline() {
        assert!(is_page("https://a-b.example/order") && !is_page("https://a_b.example/order"));
    }

    #[test]
    fn a_number_is_dialled_without_what_makes_it_readable() {
        assert_eq!(dialled("+1 (555) 010-0140"), "+15550100140");
        assert_eq!(dialled("555.010.0140"), "5550100140");
    }

    #[test]
    fn an_address_is_one_address_and_nothing_behind_it() {
        for good in ["orders@doors.example", "o'rourke+door@a-b.example"] {
            assert!(is_email(good), "{good}");
        }
        for bad in [
            "",
            "orders",
            "@doors.example",
            "a@b",
            "a@b.example?cc=c@d.example",
            "a@b.example,c@d.example",
            "a b@c.example",
            "a@b.example\r\nBcc: c@d.example",
            "a..b@c.example",
            "a@.c.example",
            "a&b@c.example",
            "a%0a@c.example",
            "ä@c.example",
        ] {
            assert!(!is_email(bad), "{bad}");
        }
    }

    #[test]
    fn a_number_has_digits_and_what_stands_between_them() {
        for good in ["+1 (555) 010-0199", "555.010.0199", "112"] {
            assert!(is_phone(good), "{good}");
        }
        for bad in ["", "12", "call me", "+1 555 010 0199;ext=2", "1+2 3 4", "1234567890123456"] {
            assert!(!is_phone(bad), "{bad}");
        }
    }

    #[test]
    fn a_page_is_on_the_web_and_runs_nothing() {
        for good in
            ["https://doors.example", "https://doors.example:8443/a/b?c=d", "http://127.0.0.1/x"]
        {
            assert!(is_page(good), "{good}");
        }
        for bad in [
            "",
            "javascript:alert(1)",
            "JavaScript:alert(1)",
            "data:text/html,x",
            "//doors.example",
            "https://",
            "https:///x",
            "https://a@b.example",
            "https://b.example/#x",
            "https://b.example/ x",
            "https://b.example\n",
            "https://b.example:x/",
            " https://b.example",
            "https://b.example/\"onclick=",
            "ftp://b.example",
        ] {
            assert!(!is_page(bad), "{bad}");
        }
    }
}
