//! Seat codes: typing errors, and slips of other classes.

use super::sample::*;
use crate::*;
use proptest::prelude::*;
use surefoot_record::*;

fn class(number: u8) -> ClassId {
    ClassId::from_bytes(&[number; 16])
}

fn code_of(class_number: u8, seat_number: u32) -> (SeatToken, String) {
    let token = draw_seat_token(&class(class_number), &[7; 32], seat_number);
    let code = make_seat_code(&class(class_number), &token).unwrap();
    (token, code)
}

#[test]
fn a_code_is_three_groups_of_three_and_always_the_same() {
    let (token, code) = code_of(6, 1);
    assert_eq!(code, code_of(6, 1).1);
    assert_eq!(code.len(), 11);
    assert_eq!((&code[3..4], &code[7..8]), ("-", "-"));
    assert!(!code.contains(['I', 'L', 'O', 'U']), "{code}");
    assert_eq!(parse_seat_code(&class(6), &code).unwrap(), token);
    let plain = code.replace('-', "");
    assert_eq!(&plain[3..8], token.as_str());
    // These codes must not change, because slips are printed.
    assert_eq!(code, PINNED);
}

const PINNED: &str = "6PF-ATR-BBA";

#[test]
fn lower_case_spaces_dashes_and_look_alikes_do_not_matter() {
    for seat_number in 0..300 {
        let (token, code) = code_of(6, seat_number);
        let typed = format!(" {} ", code.to_lowercase().replace('-', " \u{2013} "));
        assert_eq!(parse_seat_code(&class(6), &typed).unwrap(), token);
        let look_alike = code
            .replace('0', "o")
            .replacen('1', "l", 1)
            .replace('1', "I");
        assert_eq!(
            parse_seat_code(&class(6), &look_alike).unwrap(),
            token,
            "{code}"
        );
    }
}

/// The sign as which a typed sign is read.
fn read(sign: char) -> char {
    match sign {
        'O' => '0',
        'I' | 'L' => '1',
        other => other,
    }
}

#[test]
fn every_single_wrong_sign_and_every_swap_of_neighbours_is_noticed() {
    let alphabet: Vec<char> = ('0'..='9').chain('A'..='Z').collect();
    for seat_number in 0..200 {
        let (_, code) = code_of(6, seat_number);
        let signs: Vec<char> = code.chars().filter(|c| *c != '-').collect();
        for place in 0..signs.len() {
            for &wrong in alphabet.iter().filter(|w| read(**w) != signs[place]) {
                let mut typed = signs.clone();
                typed[place] = wrong;
                let typed: String = typed.into_iter().collect();
                assert!(
                    parse_seat_code(&class(6), &typed).is_err(),
                    "{code} as {typed}"
                );
            }
        }
        for place in 1..signs.len() {
            let mut typed = signs.clone();
            typed.swap(place - 1, place);
            if typed != signs {
                let typed: String = typed.into_iter().collect();
                assert!(
                    parse_seat_code(&class(6), &typed).is_err(),
                    "{code} as {typed}"
                );
            }
        }
    }
}

#[test]
fn a_slip_of_another_class_is_told_from_a_typing_slip() {
    for seat_number in 0..200 {
        let (_, code) = code_of(6, seat_number);
        assert_eq!(
            parse_seat_code(&class(9), &code),
            Err(SeatCodeError::OtherClass)
        );
    }
    let (_, code) = code_of(6, 1);
    let last = if code.ends_with('7') { "8" } else { "7" };
    let typed = format!("{}{last}", &code[..10]);
    assert_eq!(
        parse_seat_code(&class(6), &typed),
        Err(SeatCodeError::Check)
    );
}

#[test]
fn a_wrong_length_or_sign_is_named() {
    let (_, code) = code_of(6, 1);
    let expected = SEAT_CODE_SIGNS;
    for (typed, found) in [("", 0), ("--  ", 0), (&code[..10], 8)] {
        assert_eq!(
            parse_seat_code(&class(6), typed),
            Err(SeatCodeError::Length { found, expected })
        );
    }
    let long = format!("{code}A");
    assert_eq!(
        parse_seat_code(&class(6), &long),
        Err(SeatCodeError::Length {
            found: 10,
            expected
        })
    );
    for sign in ['U', 'u', '*', 'é', '０', '\u{0}'] {
        let typed = format!("{}{sign}", &code[..10]);
        assert_eq!(
            parse_seat_code(&class(6), &typed),
            Err(SeatCodeError::Sign { sign })
        );
    }
}

#[test]
fn tokens_of_a_class_spread_over_all_signs() {
    let tokens: std::collections::BTreeSet<_> = (0..2_000)
        .map(|n| draw_seat_token(&class(6), &[7; 32], n))
        .collect();
    assert!(tokens.len() >= 1_995, "{}", tokens.len());
    let used: std::collections::BTreeSet<u8> =
        tokens.iter().flat_map(|t| t.as_str().bytes()).collect();
    assert_eq!(used.len(), 32);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(3_000))]

    #[test]
    fn whatever_is_typed_gives_a_token_or_a_reason(typed in "\\PC{0,40}") {
        let _ = parse_seat_code(&class_id(), &typed);
    }

    #[test]
    fn every_code_that_is_taken_is_one_that_could_be_made(rest in "[0-9A-HJKMNP-TV-Z]{6}") {
        let (_, code) = code_of(6, 1);
        let typed = format!("{}{rest}", &code[..3]);
        if let Ok(token) = parse_seat_code(&class(6), &typed) {
            let code = make_seat_code(&class(6), &token).unwrap();
            prop_assert_eq!(code.replace('-', ""), typed);
        }
    }
}
