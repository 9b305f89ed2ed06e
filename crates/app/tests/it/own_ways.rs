//! A student's own settings: appearance, goals, reading aloud.

use crate::support::{Device, class_and_tablet, hand_in, school_year, seat_code};
use std::sync::{Arc, Mutex};
use surefoot_app::{
    AnswerGiven, App, CallError, CarryAsked, ConfidenceSaid, CreateClass, DeviceClock, ExerciseId,
    Goals, Language, NewStudentSettings, Nothing, OpenSealed, PathPrint, PracticeAsked, PrintPaper,
    ReadAloud, StudentId, Voice, VoiceMissing,
};
use surefoot_catalogue::rating::Confidence;
use surefoot_desk::NewClass;
use surefoot_exercises::{Entry, Level, Response};
use surefoot_record::{Appearance, AppearanceTheme, DecimalSign, Goal};
use surefoot_record::{Field, Rule};
use surefoot_student::practice_views::{OpenExercise, PracticeStep};
use surefoot_student::views::{MyPath, StudentSettings};

const WORDS: &str = "seven quiet rivers";

const APPEARANCE: Appearance = Appearance {
    theme: AppearanceTheme::ContrastDark,
    text_percent: 175,
    decimal_sign: DecimalSign::Comma,
    less_motion: true,
    reads_aloud: true,
};

fn set_appearance(
    device: &Device,
    student: &str,
    appearance: Appearance,
) -> Result<StudentSettings, CallError> {
    device
        .app
        .student
        .save_student_settings(NewStudentSettings {
            student: student.into(),
            language: Language::first(),
            minutes: 10,
            exercises: Some(9),
            evenings: 5,
            appearance,
        })
}

fn goal(words: &str, reached: bool) -> Goal {
    Goal {
        words: words.into(),
        reached,
    }
}

fn goals(device: &Device, student: &str, goals: &[Goal]) -> Result<MyPath, CallError> {
    device.app.student.set_goals(Goals {
        student: student.into(),
        goals: goals.to_vec(),
    })
}

fn path(device: &Device, student: &str) -> MyPath {
    let id = StudentId {
        student: student.into(),
    };
    device.app.student.my_path(id).unwrap()
}

#[test]
fn a_look_is_the_students_own_and_stands_after_the_program_was_closed() {
    let (desk, class, mut tablet, sky) = class_and_tablet("2026-09-01");
    let pack = desk.pack_of(&class);
    let code = seat_code(&desk, &class, 1);
    let rain = tablet.join(&pack, &code, "Rain").unwrap();
    assert_eq!(rain.appearance, Appearance::default());
    assert_eq!(
        set_appearance(&tablet, &sky, APPEARANCE)
            .unwrap()
            .appearance,
        APPEARANCE
    );
    tablet.to("2026-09-02");
    let start = tablet.app.device.start(Nothing {}).unwrap();
    let of = |id: &str| {
        start
            .students
            .iter()
            .find(|s| s.id == id)
            .unwrap()
            .appearance
    };
    assert_eq!(
        (of(&sky), of(&rain.id)),
        (APPEARANCE, Appearance::default())
    );
    let odd = Appearance {
        text_percent: 110,
        ..APPEARANCE
    };
    assert!(matches!(
        set_appearance(&tablet, &sky, odd),
        Err(CallError::Invalid { field, .. }) if field == Field::TextPercent
    ));
}

#[test]
fn the_catalogues_own_words_are_written_in_the_students_signs() {
    let desk = Device::on("2026-09-01");
    let class = desk
        .app
        .desk
        .create_class(CreateClass {
            class: NewClass {
                title: "Room 7 (invented)".into(),
                names: vec!["Amara".into()],
                year: school_year(),
                grades: vec![3],
                rotation_days: 10,
                concepts_a_day: 6,
            },
        })
        .unwrap()
        .id;
    let pack = desk.pack_of(&class);
    let tablet = Device::on("2026-09-01");
    let sky = tablet
        .join(&pack, &seat_code(&desk, &class, 0), "Sky")
        .unwrap()
        .id;
    let words = || {
        let rows = path(&tablet, &sky).concepts.into_iter();
        rows.map(|row| row.concept.title + &row.concept.i_can)
            .collect::<String>()
    };
    assert!(words().contains("1,000") && !words().contains("1\u{202f}000"));
    set_appearance(&tablet, &sky, APPEARANCE).unwrap();
    assert!(words().contains("1\u{202f}000") && !words().contains("1,000"));
}

#[test]
fn goals_are_three_short_notes_that_can_be_changed() {
    let (_desk, _class, mut tablet, sky) = class_and_tablet("2026-09-01");
    assert!(path(&tablet, &sky).goals.is_empty());
    let three = [
        goal("Know my sevens", false),
        goal("Draw each story first", true),
        goal("¡Ayudar a Bao!", false),
    ];
    goals(&tablet, &sky, &[goal("  Know\n my  sevens ", false)]).unwrap();
    assert_eq!(path(&tablet, &sky).goals, three[..1]);
    goals(&tablet, &sky, &three).unwrap();
    tablet.to("2026-09-02");
    assert_eq!(path(&tablet, &sky).goals, three);
    let mut four = three.to_vec();
    four.push(goal("One more", false));
    for (bad, rule) in [
        (four, Rule::TooMany),
        (vec![goal(" \t", false)], Rule::Empty),
        (vec![goal(&"a".repeat(121), false)], Rule::TooLong),
    ] {
        assert!(matches!(
            goals(&tablet, &sky, &bad),
            Err(CallError::Invalid { field, rule: found }) if field == Field::Goals && found == rule
        ));
    }
    assert_eq!(path(&tablet, &sky).goals, three);
    // A hand-in does not hold them.
    let with = std::fs::read(hand_in(&tablet, &sky)).unwrap();
    assert!(!String::from_utf8_lossy(&with).contains("sevens"));
    assert!(goals(&tablet, &sky, &[]).unwrap().goals.is_empty());
}

#[test]
fn goals_are_on_paper_only_where_the_student_says_so() {
    let (_desk, _class, tablet, sky) = class_and_tablet("2026-09-16");
    let print = |with_goals| {
        let made = tablet
            .app
            .student
            .print_path(PathPrint {
                student: sky.clone(),
                paper: PrintPaper::A4,
                with_goals,
            })
            .unwrap();
        std::fs::read(tablet.hands.saved.join(made.file_name)).unwrap()
    };
    let without_any = print(true);
    goals(&tablet, &sky, &[goal("Know my sevens", true)]).unwrap();
    assert_eq!(print(false), without_any);
    let with = print(true);
    assert!(with.starts_with(b"%PDF-") && with.len() > without_any.len());
}

#[test]
fn look_and_goals_come_along_to_a_second_device() {
    let (_desk, _class, tablet, sky) = class_and_tablet("2026-09-01");
    set_appearance(&tablet, &sky, APPEARANCE).unwrap();
    let mine = [goal("Know my sevens", true)];
    goals(&tablet, &sky, &mine).unwrap();
    let made = tablet
        .app
        .student
        .make_carry(CarryAsked {
            student: sky,
            passphrase: WORDS.into(),
        })
        .unwrap();
    let home = Device::on("2026-09-01");
    home.hands
        .will_pick(&tablet.hands.saved.join(made.file_name));
    let picked = home.app.student.pick_carry(Nothing {}).unwrap().unwrap();
    let done = home
        .app
        .student
        .take_carry(OpenSealed {
            picked: picked.picked,
            passphrase: WORDS.into(),
        })
        .unwrap();
    let start = home.app.device.start(Nothing {}).unwrap();
    assert_eq!(start.students[0].appearance, APPEARANCE);
    assert_eq!(path(&home, &done.student).goals, mine);
}

/// The next exercise of a concept whose answer is typed as a decimal.
fn decimal_exercise(tablet: &Device, student: &str) -> (Box<OpenExercise>, String) {
    let concepts: Vec<String> = path(tablet, student)
        .concepts
        .into_iter()
        .filter(|row| row.concept.has_exercises && row.concept.id.contains("decimal"))
        .map(|row| row.concept.id)
        .collect();
    for concept in concepts.iter().cycle().take(60) {
        let step = tablet.app.student.practice(PracticeAsked {
            student: student.into(),
            concept: Some(concept.clone()),
            more: true,
        });
        let Ok(PracticeStep::Exercise(open)) = step else {
            panic!("{step:?}");
        };
        let (_, seed) = open.exercise.split_once('-').unwrap();
        let made = surefoot_exercises::generate(
            concept,
            Level::try_from(open.level).unwrap(),
            u64::from_str_radix(seed, 16).unwrap(),
        )
        .unwrap();
        if matches!(made.entry, Entry::Decimal { .. })
            && let Response::Decimal { text } = surefoot_exercises::response_for(&made.answer)
            && text.contains('.')
        {
            return (open, text);
        }
        let id = ExerciseId {
            student: student.into(),
            exercise: open.exercise.clone(),
        };
        tablet.app.student.show_steps(id).unwrap();
    }
    panic!("no decimal among {concepts:?}");
}

#[test]
fn a_decimal_comma_and_a_decimal_point_are_both_right() {
    let (_desk, _class, tablet, sky) = class_and_tablet("2026-09-16");
    for (sign, typed_with) in [
        (DecimalSign::Comma, ","),
        (DecimalSign::Comma, "."),
        (DecimalSign::Point, ","),
        (DecimalSign::Language, "."),
    ] {
        let decimal_sign = sign;
        set_appearance(
            &tablet,
            &sky,
            Appearance {
                decimal_sign,
                ..APPEARANCE
            },
        )
        .unwrap();
        let (open, text) = decimal_exercise(&tablet, &sky);
        let exercise = || open.exercise.clone();
        tablet
            .app
            .student
            .say_confidence(ConfidenceSaid {
                student: sky.clone(),
                exercise: exercise(),
                confidence: Confidence::OnMyOwn,
            })
            .unwrap();
        let feedback = tablet
            .app
            .student
            .answer(AnswerGiven {
                student: sky.clone(),
                exercise: exercise(),
                response: Response::Decimal {
                    text: text.replace('.', typed_with),
                },
                seconds: 5,
            })
            .unwrap();
        assert!(feedback.right, "{text} typed with {typed_with}, {sign:?}");
    }
}

/// The texts that a voice was asked to read, in their order.
#[derive(Clone, Default)]
struct Heard(Arc<Mutex<Vec<String>>>);

impl Voice for Heard {
    fn speak(&self, text: &str, language: Language) -> Result<(), CallError> {
        let mut heard = self.0.lock().unwrap();
        heard.push(format!("{} {text}", language.as_str()));
        Ok(())
    }

    fn stop(&self) {
        self.0.lock().unwrap().push("stop".into());
    }
}

#[test]
fn a_text_is_read_in_place_of_what_was_read_and_without_a_voice_the_reason_is_named() {
    let (_desk, _class, tablet, _sky) = class_and_tablet("2026-09-01");
    let read = |text: &str| ReadAloud {
        text: text.into(),
        language: Language::tagged("es").unwrap(),
    };
    assert_eq!(
        tablet.app.device.speak(read("hola")),
        Err(CallError::NoVoice {
            missing: VoiceMissing::Everything
        })
    );
    let heard = Heard::default();
    let app = App::open(
        &tablet.folder.path().join("data"),
        Box::new(tablet.hands.clone()),
        Box::new(DeviceClock),
        Box::new(heard.clone()),
    )
    .unwrap();
    app.device.speak(read("  tres más dos ")).unwrap();
    app.device.speak(read(" ")).unwrap();
    app.device.stop_speaking(Nothing {}).unwrap();
    assert!(matches!(
        app.device.speak(read(&"a".repeat(20_001))),
        Err(CallError::Invalid { .. })
    ));
    assert_eq!(
        *heard.0.lock().unwrap(),
        ["stop", "es tres más dos", "stop", "stop"]
    );
}
