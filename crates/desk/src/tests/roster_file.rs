//! Rosters from files. Headings: 1EdTech OneRoster 1.1.1 CSV Tables; 1.2.1 CSV Binding.

use crate::{DeskError, LineReading, RosterFile, Rule, read_roster_files};

const USERS_1_1: &str = "sourcedId,status,dateLastModified,enabledUser,orgSourcedIds,role,username,userIds,givenName,familyName,middleName,identifier,email,sms,phone,agentSourcedIds,grades,password\r\n";
const USERS_1_2: &str = "sourcedId,status,dateLastModified,enabledUser,username,userIds,givenName,familyName,middleName,identifier,email,sms,phone,agentSourcedIds,grades,password,userMasterIdentifier,resourceSourcedIds,preferredGivenName,preferredMiddleName,preferredFamilyName,primaryOrgSourcedId,pronouns\r\n";
const ENROLLMENTS: &str = "sourcedId,status,dateLastModified,classSourcedId,schoolSourcedId,userSourcedId,role,primary,beginDate,endDate\r\n";
const CLASSES: &str = "sourcedId,status,dateLastModified,title,grades,courseSourcedId,classCode,classType,location,schoolSourcedId,termSourcedIds,subjects,subjectCodes,periods\r\n";

fn read(files: &[(&str, &str)]) -> Result<RosterFile, DeskError> {
    let files: Vec<_> = files
        .iter()
        .map(|(name, text)| ((*name).to_owned(), text.as_bytes().to_vec()))
        .collect();
    read_roster_files(&files)
}

fn names(found: &RosterFile) -> Vec<(String, Vec<String>)> {
    found
        .classes
        .iter()
        .map(|class| {
            let names = (class.lines.iter())
                .filter(|line| line.reading == LineReading::Name)
                .map(|line| format!("{} {}", line.first, line.last).trim().to_owned());
            (class.title.clone(), names.collect())
        })
        .collect()
}

#[test]
fn one_roster_1_1_gives_each_class_its_students_and_nothing_else_of_them() {
    let users = format!(
        "\u{feff}{USERS_1_1}u1,,,true,s1,student,bao1,,Bao,Invented,,,bao@example.org,1,2,,04,secret\r\n\
         u2,,,true,s1,student,ana2,,Ana,\"Made, Up\",,,ana@example.org,1,2,,04,secret\r\n\
         u3,,,true,s1,teacher,t,,Teach,Er,,,t@example.org,,,,,secret\r\n\
         u4,,,false,s1,student,gone,,Gone,X,,,,,,,04,\r\n\
         u5,tobedeleted,,true,s1,student,old,,Old,X,,,,,,,04,\r\n"
    );
    let enrollments = format!(
        "{ENROLLMENTS}e1,,,c2,s1,u1,student,false,,\r\ne2,,,c1,s1,u2,student,false,,\r\n\
         e3,,,c1,s1,u1,student,false,,\r\ne4,,,c1,s1,u3,teacher,true,,\r\ne5,,,c1,s1,u4,student,,,\r\n"
    );
    let classes = format!(
        "{CLASSES}c1,,,Room 4,04,k,,homeroom,,s1,t,,,\r\nc2,,,Room 5,05,k,,homeroom,,s1,t,,,\r\n"
    );
    let found = read(&[
        ("export/users.csv", &users),
        ("export/enrollments.csv", &enrollments),
        ("export/classes.csv", &classes),
    ])
    .unwrap();
    assert_eq!(
        names(&found),
        [
            (
                "Room 4".to_owned(),
                vec!["Bao Invented".to_owned(), "Ana Made, Up".to_owned()]
            ),
            ("Room 5".to_owned(), vec!["Bao Invented".to_owned()]),
        ]
    );
    let everything = format!("{found:?}");
    for secret in ["secret", "example.org", "bao1"] {
        assert!(!everything.contains(secret), "{secret}");
    }
}

#[test]
fn one_roster_1_2_takes_the_preferred_name_and_the_role_from_its_own_file() {
    let users = format!(
        "{USERS_1_2}u1,,,true,a,,Alexandra,X,,,a@example.org,,,,04,pw,,,Alex,,,s1,\r\n\
         u2,,,true,b,,Bea,X,,,,,,,04,pw,,,,,,s1,\r\nu3,,,true,c,,Teach,X,,,,,,,,pw,,,,,,s1,\r\n"
    );
    let roles = "sourcedId,status,dateLastModified,userSourcedId,roleType,role,beginDate,endDate,orgSourcedId,userProfileSourcedId\r\n\
        r1,,,u1,primary,student,,,s1,\r\nr2,,,u2,primary,student,,,s1,\r\nr3,,,u3,primary,teacher,,,s1,\r\n";
    let found = read(&[("users.csv", &users), ("roles.csv", roles)]).unwrap();
    assert_eq!(
        names(&found),
        [(String::new(), vec!["Alex X".to_owned(), "Bea X".to_owned()])]
    );
}

#[test]
fn long_names_and_too_many_are_named_and_nothing_at_all_is_an_error() {
    let long = "x".repeat(41);
    let found = read(&[("a.csv", &format!("name,id\nAna,1\n{long},2\n\"\",3\n"))]).unwrap();
    let readings: Vec<LineReading> = (found.classes[0].lines.iter())
        .map(|line| line.reading)
        .collect();
    use LineReading::{Full, Heading, Name, NoName, TooLong};
    assert_eq!(readings, [Heading, Name, TooLong, NoName]);
    let many: String = (0..70).map(|n| format!("S{n}\n")).collect();
    let found = read(&[("a.csv", &many)]).unwrap();
    let full = |line: &&crate::RosterLine| line.reading == Full;
    assert_eq!(found.classes[0].lines.iter().filter(full).count(), 10);
    assert_eq!(names(&found)[0].1.len(), 60);
    assert!(matches!(
        read(&[("a.csv", "name\n")]),
        Err(DeskError::Invalid {
            rule: Rule::Empty,
            ..
        })
    ));
    let binary = vec![("a.csv".to_owned(), b"name\n\x00\xff\xfe".to_vec())];
    assert!(matches!(
        read_roster_files(&binary),
        Err(DeskError::Invalid {
            rule: Rule::NotText,
            ..
        })
    ));
}

proptest::proptest! {
    #![proptest_config(surefoot_test_support::long())]

    #[test]
    fn changed_rosters(changes in surefoot_test_support::any_changes(), which in 0..4_usize) {
        let mut files = [
            ("users.csv", format!("{USERS_1_1}u1,,,true,s1,student,b,,Bao,Invented,,,b@example.org,1,2,,04,secret\r\n")),
            ("enrollments.csv", format!("{ENROLLMENTS}e1,,,c1,s1,u1,student,false,,\r\n")),
            ("classes.csv", format!("{CLASSES}c1,,,Room 4,04,k,,homeroom,,s1,t,,,\r\n")),
            ("roles.csv", "sourcedId,status,dateLastModified,userSourcedId,roleType,role\r\nr,,,u1,primary,student\r\n".to_owned()),
        ]
        .map(|(name, text)| (name.to_owned(), text.into_bytes()));
        files[which].1 = surefoot_test_support::changed(&files[which].1, &changes);
        for picked in [&files[..], &files[which..=which]] {
            if let Ok(found) = read_roster_files(picked) {
                let seats: usize = found.classes.iter().map(|class| class.lines.len()).sum();
                proptest::prop_assert!(seats > 0);
            }
        }
    }
}
