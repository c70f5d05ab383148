//! Reading typed lines, whatever bytes come.

use std::io::{self, BufRead};

/// The most bytes of a line that are kept; a message of the platform's longest text fits twice.
const LONGEST_LINE: usize = 32 * 1024;

/// The next line without its end, or `None` when the input has ended.
///
/// What is not UTF-8 is replaced, control characters become spaces, and what goes beyond
/// [`LONGEST_LINE`] bytes is read and dropped, so that no line takes more memory than that.
///
/// # Errors
/// When the input fails.
pub fn next_line(input: &mut impl BufRead) -> io::Result<Option<String>> {
    let mut line = Vec::new();
    let mut any = false;
    loop {
        let read = match input.fill_buf() {
            Ok(read) => read,
            Err(error) if error.kind() == io::ErrorKind::Interrupted => continue,
            Err(error) => return Err(error),
        };
        if read.is_empty() {
            break;
        }
        any = true;
        let end = read.iter().position(|byte| *byte == b'\n');
        let part = read.get(..end.unwrap_or(read.len())).unwrap_or_default();
        let room = LONGEST_LINE.saturating_sub(line.len());
        line.extend(part.iter().take(room));
        let used = part.len() + usize::from(end.is_some());
        input.consume(used);
        if end.is_some() {
            break;
        }
    }
    let text = String::from_utf8_lossy(&line);
    let text = text.trim_start_matches('\u{feff}');
    let plain = |c: char| if c.is_control() { ' ' } else { c };
    Ok(any.then(|| text.chars().map(plain).collect::<String>().trim().to_owned()))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn lines(bytes: &[u8]) -> Vec<String> {
        // A small buffer, so that lines fall across its ends.
        let mut input = io::BufReader::with_capacity(7, bytes);
        let mut lines = Vec::new();
        while let Some(line) = next_line(&mut input).expect("readable") {
            lines.push(line);
        }
        lines
    }

    #[test]
    fn lines_end_as_on_any_system_and_the_last_needs_no_end() {
        assert_eq!(lines(b"one\r\n\n two \nthree"), ["one", "", "two", "three"]);
        assert_eq!(lines(b"one\n"), ["one"]);
        assert!(lines(b"").is_empty());
    }

    #[test]
    fn strange_bytes_are_replaced() {
        assert_eq!(lines(b"\xef\xbb\xbfone\n\xff\xfe\n"), ["one", "\u{fffd}\u{fffd}"]);
        assert_eq!(lines(b"red \x1b[31m text\0\n"), ["red  [31m text"]);
    }

    #[test]
    fn a_line_without_end_keeps_its_beginning() {
        let mut bytes = vec![b'x'; LONGEST_LINE * 3];
        bytes.extend(b"\nnext\n");
        let lines = lines(&bytes);
        assert_eq!(lines.len(), 2);
        assert_eq!(lines[0].len(), LONGEST_LINE);
        assert_eq!(lines[1], "next");
    }
}
