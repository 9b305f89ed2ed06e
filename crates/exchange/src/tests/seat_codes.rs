//! Seat codes: typing errors, and slips of other classes.

use super::sample::*;
use crate::*;
use proptest::prelude::*;
use surefoot_record::*;

/// The classes of these tests. Computing the signs of many would take long.
fn class(number: u8) -> ClassSigns {
    ClassSigns::new(format!("0{number}7K2M9X")).unwrap()
}

fn code_of(class_number: u8, seat_number: u32) -> (SeatToken, String) {
    let token = draw_seat_token(&class(class_number), &[7; 32], seat_number);
    let code = make_seat_code(&class(class_number), &token).unwrap();
    (token, code)
}

fn of_length(text: &str, signs: usize) -> &str {
    let dashes = (signs - 1) / 3;
    &text[..signs + dashes]
}

#[test]
fn a_code_is_five_groups_of_three_and_always_the_same() {
    let token = draw_seat_token(class_signs(), &[7; 32], 1);
    let code = make_seat_code(class_signs(), &token).unwrap();
    let groups: Vec<&str> = code.split('-').collect();
    assert!(groups.iter().all(|group| group.len() == 3), "{code}");
    assert!(!code.contains(['I', 'L', 'O', 'U']), "{code}");
    assert_eq!(parse_seat_code(class_signs(), &code).unwrap(), token);
    let plain = code.replace('-', "");
    assert_eq!(&plain[..8], class_signs().as_str());
    assert_eq!(&plain[8..14], token.as_str());
    let pin_signs = pin_signs_of(&teacher(), &class_id(), &token);
    // These signs must not change, because slips are printed.
    assert_eq!((code.as_str(), pin_signs.in_groups().as_str()), PINNED);
}

const PINNED: (&str, &str) = ("J58-Y82-043-TR2-99P", "SWP-5K7");

/// As the teacher's key signs a pack, and the recipient opens hand-ins: both make the slip.
#[test]
fn a_class_with_another_key_has_other_class_signs() {
    let stranger = SigningKey::from_seed(&[99; 32]).public();
    let class = class_identity().recipient();
    for id in [class_id_of(&stranger, &class).unwrap(), other_class_id()] {
        assert_ne!(id, class_id());
        assert_ne!(&ClassSigns::of(&id).unwrap(), class_signs());
    }
    let code = make_seat_code(class_signs(), &seat()).unwrap();
    assert_eq!(
        parse_seat_code(&ClassSigns::of(&other_class_id()).unwrap(), &code),
        Err(SeatCodeError::OtherClass)
    );
}

fn pin_signs(seat_number: u32) -> (SeatToken, PinSigns) {
    let token = draw_seat_token(class_signs(), &[7; 32], seat_number);
    let signs = pin_signs_of(&teacher(), &class_id(), &token);
    (token, signs)
}

#[test]
fn pin_signs_are_read_as_typed_and_every_slip_of_the_finger_is_noticed() {
    let alphabet: Vec<char> = ('0'..='9').chain('A'..='Z').collect();
    for seat_number in 0..200 {
        let (token, signs) = pin_signs(seat_number);
        let shown = signs.in_groups();
        assert_eq!((shown.len(), &shown[3..4]), (7, "-"), "{shown}");
        let typed = format!(
            " {} ",
            shown.to_lowercase().replace('0', "o").replace('1', "l")
        );
        assert_eq!(parse_pin_signs(&token, &typed), Ok(signs.clone()));
        let right: Vec<char> = signs.as_str().chars().collect();
        let typed: Vec<Vec<char>> = (0..right.len())
            .flat_map(|place| {
                let right = &right;
                (alphabet.iter().filter(move |w| read(**w) != right[place])).map(move |wrong| {
                    let mut typed = right.clone();
                    typed[place] = *wrong;
                    typed
                })
            })
            .chain((1..right.len()).map(|place| {
                let mut typed = right.clone();
                typed.swap(place - 1, place);
                typed
            }))
            .filter(|typed| *typed != right)
            .collect();
        for typed in typed {
            let typed: String = typed.into_iter().collect();
            assert!(
                parse_pin_signs(&token, &typed).is_err(),
                "{shown} as {typed}"
            );
        }
    }
}

#[test]
fn pin_signs_say_nothing_of_each_other_or_of_the_seat_code() {
    let all: std::collections::BTreeSet<String> = (0..2_000)
        .map(|n| pin_signs(n).1.as_str().to_owned())
        .collect();
    assert!(all.len() >= 1_990, "{}", all.len());
    let (token, signs) = pin_signs(1);
    let stranger = SigningKey::from_seed(&[99; 32]);
    assert_ne!(pin_signs_of(&stranger, &class_id(), &token), signs);
    assert_ne!(pin_signs_of(&teacher(), &other_class_id(), &token), signs);
    let code = make_seat_code(class_signs(), &token).unwrap();
    let last = &code.replace('-', "")[9..];
    assert_ne!(signs.as_str(), last);
    assert_eq!(
        parse_pin_signs(&token, "ABC-DE"),
        Err(SeatCodeError::Length {
            found: 5,
            expected: PIN_SIGNS
        })
    );
    assert_eq!(format!("{signs:?}"), "PinSigns");
}

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
    let typed = format!("{}{last}", of_length(&code, 14));
    assert_eq!(
        parse_seat_code(&class(6), &typed),
        Err(SeatCodeError::Check)
    );
}

#[test]
fn a_wrong_length_or_sign_is_named() {
    let (_, code) = code_of(6, 1);
    let expected = SEAT_CODE_SIGNS;
    for (typed, found) in [("", 0), ("--  ", 0), (of_length(&code, 14), 14)] {
        assert_eq!(
            parse_seat_code(&class(6), typed),
            Err(SeatCodeError::Length { found, expected })
        );
    }
    let long = format!("{code}A");
    assert_eq!(
        parse_seat_code(&class(6), &long),
        Err(SeatCodeError::Length {
            found: 16,
            expected
        })
    );
    for sign in ['U', 'u', '*', 'é', '０', '\u{0}'] {
        let typed = format!("{}{sign}", of_length(&code, 14));
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
        let _ = parse_seat_code(class_signs(), &typed);
        let _ = parse_pin_signs(&seat(), &typed);
    }

    #[test]
    fn every_code_that_is_taken_is_one_that_could_be_made(rest in "[0-9A-HJKMNP-TV-Z]{7}") {
        let typed = format!("{}{rest}", class(6));
        if let Ok(token) = parse_seat_code(&class(6), &typed) {
            let code = make_seat_code(&class(6), &token).unwrap();
            prop_assert_eq!(code.replace('-', ""), typed);
        }
    }
}
