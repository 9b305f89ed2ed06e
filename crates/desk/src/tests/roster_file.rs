//! Rosters from files. Headings: 1EdTech OneRoster 1.1.1 CSV Tables; 1.2.1 CSV Binding.

use crate::RosterFile;
use crate::{DeskError, Rule, read_roster_files};

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
        .map(|c| (c.title.clone(), c.names.clone()))
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
                vec!["Bao".to_owned(), "Ana".to_owned()]
            ),
            ("Room 5".to_owned(), vec!["Bao".to_owned()]),
        ]
    );
    let everything = format!("{found:?}");
    for secret in ["secret", "example.org", "Invented", "Made", "bao1"] {
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
        [(String::new(), vec!["Alex".to_owned(), "Bea".to_owned()])]
    );
}

#[test]
fn a_plain_table_is_read_by_its_heading_whatever_parts_its_columns() {
    let table =
        "Id;Apellido;Nombre;Correo\r\n1;García;Ana;ana@example.org\r\n;;;\r\n2;Li;Bao;b@x\r\n";
    let found = read(&[("Sala 4.csv", table)]).unwrap();
    assert_eq!(
        names(&found),
        [(
            "Sala 4".to_owned(),
            vec!["Ana".to_owned(), "Bao".to_owned()]
        )]
    );
    let quoted = "Last,\"First name\"\n\"O\"\"Hara\",\"Mary \"\"Mo\"\"\"\n";
    assert_eq!(
        names(&read(&[("a.csv", quoted)]).unwrap())[0].1,
        ["Mary \"Mo\""]
    );
    let bare = "Ana\nBao\nCarlos";
    assert_eq!(
        names(&read(&[("b.csv", bare)]).unwrap())[0].1,
        ["Ana", "Bao", "Carlos"]
    );
}

#[test]
fn what_cannot_be_a_name_is_counted_and_nothing_at_all_is_an_error() {
    let long = "x".repeat(41);
    let found = read(&[("a.csv", &format!("name\nAna\n{long}\n\"\",x\n"))]).unwrap();
    assert_eq!(
        (found.classes[0].names.len(), found.classes[0].left_out),
        (1, 2)
    );
    let many: String = (0..70).map(|n| format!("S{n}\n")).collect();
    let found = read(&[("a.csv", &many)]).unwrap();
    assert_eq!(
        (found.classes[0].names.len(), found.classes[0].left_out),
        (60, 10)
    );
    assert!(matches!(
        read(&[("a.csv", "name\n")]),
        Err(DeskError::Invalid {
            rule: Rule::Empty,
            ..
        })
    ));
    let binary = vec![(
        "a.csv".to_owned(),
        vec![b'n', b'a', b'm', b'e', b'\n', 0xff, 0xfe],
    )];
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
                let seats: usize = found.classes.iter().map(|class| class.names.len()).sum();
                proptest::prop_assert!(seats > 0);
            }
        }
    }
}
